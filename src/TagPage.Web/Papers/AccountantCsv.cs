using System.Globalization;
using System.Text;
using TagPage.Core.Money;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Web.Csv;

namespace TagPage.Web.Papers;

/// <summary>A year for the accountant: UTF-8 with its mark, commas, points, days as 2027-03-14, and no cell that runs as a formula.</summary>
public static class AccountantCsv
{
    public static byte[] Payments(IReadOnlyList<FigureStore.Paid> payments, ShopDetails shop) => Bytes(
        ["payment", "day", "from", "how", "amount", "currency", "takes_back", "tickets", "note"],
        payments.Select(p => new[]
        {
            N(p.Id), Day(p.PaidOn), p.FromName, p.Method.ToString().ToLowerInvariant(), Amount(p.AmountMinor, shop), shop.Currency,
            p.UndoesId is { } undone ? N(undone) : "", p.Tickets, p.Note,
        }));

    /// <summary>The tax of a ticket is for a look; what is owed to the tax office follows from the sums of bills or of the year.</summary>
    public static byte[] Charges(IReadOnlyList<FigureStore.Charged> charges, ShopDetails shop) => Bytes(
        ["strung_on", "ticket", "tax_percent", "gross", "tax", "net", "currency"],
        charges.Select(c => (c, Tax: Tax.Within(c.GrossMinor, c.TaxBp))).Select(row => new[]
        {
            Day(row.c.StrungOn), row.c.Ticket is { } ticket ? N(ticket) : "prepaid", (row.c.TaxBp / 100m).ToString("0.##", CultureInfo.InvariantCulture), Amount(row.c.GrossMinor, shop),
            Amount(row.Tax, shop), Amount(row.c.GrossMinor - row.Tax, shop), shop.Currency,
        }));

    private static byte[] Bytes(string[] head, IEnumerable<string[]> rows)
    {
        var text = string.Concat(rows.Prepend(head).Select(row => string.Join(',', row.Select(Cell)) + "\r\n"));
        return [.. Encoding.UTF8.GetPreamble(), .. Encoding.UTF8.GetBytes(text)];
    }

    private static string Cell(string text)
    {
        var safe = FormulaGuard.Guard(text);
        return safe.AsSpan().IndexOfAny(",\"\r\n;") < 0 ? safe : $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }

    private static string N(long number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Amount(long minor, ShopDetails shop) => MinorUnits.ToAmount(minor, shop.Currency).ToString("F" + MinorUnits.Places(shop.Currency), CultureInfo.InvariantCulture);
}
