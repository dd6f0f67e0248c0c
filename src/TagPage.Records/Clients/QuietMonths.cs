namespace TagPage.Records.Clients;

/// <summary>Months in which a client wants no reminders: one bit each, January lowest.</summary>
public static class QuietMonths
{
    public static IEnumerable<int> Of(int bits) => Enumerable.Range(1, 12).Where(month => Has(bits, month));

    public static bool Has(int bits, int month) => (bits >> (month - 1) & 1) == 1;

    /// <summary>Numbers that are no month are left out.</summary>
    public static int From(IEnumerable<int> months) => months.Where(m => m is >= 1 and <= 12).Aggregate(0, (bits, m) => bits | 1 << (m - 1));
}
