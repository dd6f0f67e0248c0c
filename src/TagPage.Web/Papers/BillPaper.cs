using TagPage.Core.Money;
using TagPage.Core.Text;
using TagPage.Labels.Papers;
using TagPage.Records.Money;
using TagPage.Records.Outbox;
using TagPage.Records.Shop;
using TagPage.Web.Words;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Web.Papers;

/// <summary>A bill in words, as its page and its PDF have them, in the language it was written in.</summary>
public static class BillPaper
{
    public static string Title(BillRow bill)
    {
        var say = PaperWords.In(bill.Language).Say;
        return bill.CancelsId is null
            ? say.Bill.Fill(("number", bill.Name))
            : say.Cancelling.Fill(("number", bill.Name), ("other", BillRow.NameOf(bill.CancelsYear!.Value, bill.CancelsNumber!.Value)));
    }

    public static string FileName(BillRow bill) => $"{Title(bill)}.pdf";

    public static byte[] Pdf(BillRow bill) => SheetPdf.Of(Of(bill));

    /// <summary>The email that carries it.</summary>
    public static WrittenMail Mail(BillRow bill)
    {
        var say = PaperWords.In(bill.Language).Say;
        (string Name, string Value)[] values = [("title", Title(bill)), ("shop", bill.Sender.Name), ("name", bill.ToName)];
        return new(say.MailSubject.Fill(values), MailText.Fill(say.MailBody, [.. values.Select(v => (v.Name, (MailText)v.Value))]));
    }

    public static Sheet Of(BillRow bill)
    {
        var words = PaperWords.In(bill.Language);
        var (say, title) = (words.Say, Title(bill));
        string Money(long minor) => words.Language.Money(minor, bill.Currency);
        return new Sheet
        {
            Language = words.Language.Code,
            Title = title,
            From = From(bill.Sender),
            To = [.. bill.ToAddress.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Prepend(bill.ToName).Where(line => line.Length > 0)],
            Facts = [.. Facts(bill, words)],
            Rows = [.. bill.Lines.GroupBy(line => line.Ticket).SelectMany(ticket => Rows(ticket, bill.Currency, words))],
            Sums =
            [
                .. words.Taxes(bill.Taxes, bill.Sender.Country, bill.Currency),
                (say.Total, Money(bill.TotalMinor)),
                .. bill.PaidMinor == 0 ? Array.Empty<(string, string)>() : [(say.PaidAlready, Money(-bill.PaidMinor)), (say.ToPay, Money(bill.ToPayMinor))],
            ],
            Notes = [.. Notes(bill, words)],
            Square = Payment.Square(bill.Sender, bill.Currency, IsToPay(bill) ? bill.ToPayMinor : 0, say.TransferText.Fill(("number", bill.Name)), Payment.ReferenceOf(bill)),
            SquareWords = [say.Scan, Money(bill.ToPayMinor), say.ForBill.Fill(("number", bill.Name)), say.Payee.Fill(("name", bill.Sender.AccountName))],
            PageOf = (page, of) => say.PageOf.Fill(("title", title), ("page", $"{page}"), ("of", $"{of}")),
        };
    }

    /// <summary>Neither cancelled nor cancelling.</summary>
    public static bool IsToPay(BillRow bill) => bill is { CancelsId: null, CancelledById: null, ToPayMinor: > 0 };

    internal static IReadOnlyList<string> From(BillSender shop) =>
        [.. new[] { shop.Name, shop.Street, shop.Town, shop.Phone is { } phone ? Phones.Shown(phone) : null, shop.Mail }.OfType<string>().Where(line => line.Length > 0)];

    private static IEnumerable<(string, string)> Facts(BillRow bill, PaperWords words)
    {
        yield return (words.Say.Number, bill.Name);
        yield return (words.Say.Date, words.Language.Day(bill.IssuedOn));
        yield return (Days(bill, words.Say), words.Days(bill.FromOn, bill.ToOn));
        if (bill.Sender.TaxNumber.Length > 0)
            yield return (words.Say.TaxNumber, bill.Sender.TaxNumber);
    }

    private static string Days(BillRow bill, OwnPagePaperPhrases say) =>
        bill.Lines.All(line => line.PrepaidId is not null) ? say.Bought : bill.Lines.Any(line => line.IsVisit) ? say.WorkDays : say.StrungDays;

    private static IEnumerable<SheetRow> Rows(IGrouping<long?, BillLine> ticket, string currency, PaperWords words)
    {
        var (first, say) = (ticket.First(), words.Say);
        if (ticket.Key is not null)
            yield return new SheetRow(words.List(say.Ticket.Fill(("ticket", $"{first.Ticket}")), words.On(first.IsVisit ? say.DoneOn : say.StrungOn, first.StrungOn), words.Whose(first)), "") { IsHeading = true };
        foreach (var line in ticket)
            yield return new SheetRow(words.Of(line, currency), words.Language.Money(line.AmountMinor, currency));
    }

    private static IEnumerable<string> Notes(BillRow bill, PaperWords words)
    {
        if (bill.CancelsId is not null)
            yield return words.Say.TakesBack;
        if (IsToPay(bill) && bill.Sender.Iban is { } iban)
            yield return words.Say.PleasePay.Fill(("name", bill.Sender.AccountName), ("account", Iban.Shown(iban)), ("number", Payment.Names(bill.Sender, bill.Name, Payment.ReferenceOf(bill))));
    }
}
