using TagPage.Core.Money;
using TagPage.Labels.Papers;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Web.Words;

namespace TagPage.Web.Papers;

/// <summary>A bill in words, as its page and its PDF have them.</summary>
public static class BillPaper
{
    public static string Title(BillRow bill) => bill.CancelsId is null ? $"Bill {bill.Name}" : $"Bill {bill.Name}, cancelling {BillRow.NameOf(bill.CancelsYear!.Value, bill.CancelsNumber!.Value)}";

    public static string FileName(BillRow bill) => $"bill-{bill.Name}.pdf";

    public static byte[] Pdf(BillRow bill) => SheetPdf.Of(Of(bill));

    public static Sheet Of(BillRow bill)
    {
        string Money(long minor) => Formats.Money(minor, bill.Currency);
        return new Sheet
        {
            Title = Title(bill),
            From = From(bill.Sender),
            To = [.. bill.ToAddress.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Prepend(bill.ToName).Where(line => line.Length > 0)],
            Facts = [.. Facts(bill)],
            Rows = [.. bill.Lines.GroupBy(line => line.Ticket).SelectMany(ticket => Rows(ticket, bill.Currency))],
            Sums =
            [
                .. bill.Taxes.Where(part => part.BasisPoints > 0).SelectMany(part => TaxRows(part, Money)),
                ("Total", Money(bill.TotalMinor)),
                .. bill.PaidMinor == 0 ? Array.Empty<(string, string)>() : [("Paid already", Money(-bill.PaidMinor)), ("To pay", Money(bill.ToPayMinor))],
            ],
            Notes = [.. Notes(bill)],
            Square = Payment.Square(bill.Sender, bill.Currency, IsToPay(bill) ? bill.ToPayMinor : 0, $"Bill {bill.Name}"),
            SquareWords = ["Scan this with your bank’s app to pay:", Money(bill.ToPayMinor), $"for bill {bill.Name}", $"to {bill.Sender.AccountName}"],
            PageOf = (page, of) => $"{Title(bill)}, page {page} of {of}",
        };
    }

    /// <summary>Neither cancelled nor cancelling.</summary>
    public static bool IsToPay(BillRow bill) => bill is { CancelsId: null, CancelledById: null, ToPayMinor: > 0 };

    internal static IReadOnlyList<string> From(BillSender shop) =>
        [.. new[] { shop.Name, shop.Street, shop.Town, shop.Phone is { } phone ? Phones.Shown(phone) : null, shop.Mail }.OfType<string>().Where(line => line.Length > 0)];

    private static IEnumerable<(string, string)> Facts(BillRow bill)
    {
        yield return ("Number", bill.Name);
        yield return ("Date", Formats.Day(bill.IssuedOn));
        yield return (bill.Lines.Any(line => line.IsVisit) ? "Work done" : "Rackets strung", Formats.Days(bill.FromOn, bill.ToOn));
        if (bill.Sender.TaxNumber.Length > 0)
            yield return ("Tax number", bill.Sender.TaxNumber);
    }

    private static IEnumerable<SheetRow> Rows(IGrouping<long, BillLine> ticket, string currency)
    {
        var first = ticket.First();
        var whose = first.Whose.Length > 0 ? $", {first.Whose}" : "";
        yield return new SheetRow($"Ticket {first.Ticket}, {(first.IsVisit ? "done" : "strung")} {Formats.Day(first.StrungOn)}{whose}", "") { IsHeading = true };
        foreach (var line in ticket)
            yield return new SheetRow(PriceWords.Of(line, currency), Formats.Money(line.AmountMinor, currency));
    }

    internal static IEnumerable<(string, string)> TaxRows(TaxPart part, Func<long, string> money)
    {
        yield return ($"Without tax of {PriceWords.Rate(part.BasisPoints)}", money(part.Net));
        yield return ($"Tax of {PriceWords.Rate(part.BasisPoints)}", money(part.Amount));
    }

    private static IEnumerable<string> Notes(BillRow bill)
    {
        if (bill.CancelsId is not null)
            yield return "This bill takes back the amounts of the one it names.";
        if (IsToPay(bill) && bill.Sender.Iban is { } iban)
            yield return $"Please pay to {bill.Sender.AccountName}, {Iban.Shown(iban)}, with the number {bill.Name}.";
    }
}
