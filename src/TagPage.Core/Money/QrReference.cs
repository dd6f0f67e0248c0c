namespace TagPage.Core.Money;

/// <summary>
/// The reference that a payment into a Swiss QR-IBAN must carry: 26 digits of the biller’s own and a check digit by modulo 10, recursive
/// (Swiss Implementation Guidelines QR-bill, SIX; the table from memory, the result held against the guidelines’ example).
/// </summary>
public static class QrReference
{
    private const int Own = 26;

    private static readonly int[] Carry = [0, 9, 4, 6, 8, 2, 7, 1, 3, 5];

    /// <param name="digits">At most 26; zeros are put before them.</param>
    /// <exception cref="ArgumentException">Something else than digits, or too many.</exception>
    public static string Of(string digits)
    {
        if (digits.Length is 0 or > Own || !digits.All(char.IsAsciiDigit))
            throw new ArgumentException("1 to 26 digits.", nameof(digits));
        var own = digits.PadLeft(Own, '0');
        var last = own.Aggregate(0, (carry, digit) => Carry[(carry + (digit - '0')) % 10]);
        return $"{own}{(10 - last) % 10}";
    }

    /// <summary>As it is written on paper: two digits, then groups of five.</summary>
    public static string Shown(string reference) => $"{reference[..2]} {string.Join(' ', reference[2..].Chunk(5).Select(five => new string(five)))}";
}
