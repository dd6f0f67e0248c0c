using TagPage.Core.Money;
using TagPage.Core.Text;
using TagPage.Labels.Papers;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Prepaid;
using TagPage.Records.Shop;
using TagPage.Web.Words;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Web.Papers;

/// <summary>What a client takes along with a racket, in their language: what it cost, what was paid, what is still to be paid.</summary>
public static class ReceiptPaper
{
    /// <summary>A ticket with what it cost and what of which payment is laid against it.</summary>
    public sealed record Ticket(JobRow Job, IReadOnlyList<ChargeLine> Lines, IReadOnlyList<PaymentStore.Row> Payments)
    {
        public long PriceMinor => Lines.Sum(line => line.AmountMinor);

        public long OpenMinor => Job.PaidOn is null ? PriceMinor - Job.LaidMinor : 0;
    }

    /// <summary>Of one ticket, or of several that one party pays for; of several each stands under its heading.</summary>
    public static Sheet Of(IReadOnlyList<Ticket> tickets, ShopDetails shop, PriceList list)
    {
        var (first, lines) = (tickets[0].Job, tickets.SelectMany(ticket => ticket.Lines).ToList());
        var words = PaperWords.For(first.Payer, first.ClientLanguage, shop);
        var say = words.Say;
        string Money(long minor) => words.Language.Money(minor, shop);
        return new Sheet
        {
            Language = words.Language.Code,
            Title = tickets.Count == 1 ? say.Receipt.Fill(("ticket", $"{first.Ticket}")) : say.Receipts.Fill(("n", $"{tickets.Count}")),
            From = From(shop),
            To = [first.Payer ?? first.Client],
            Facts = [.. tickets.Count == 1 ? Facts(first, words) : [], .. TaxNumber(list, say)],
            Rows = [.. tickets.SelectMany(ticket => Rows(ticket, shop, words, withHeading: tickets.Count > 1))],
            Sums =
            [
                .. words.Taxes(Tax.Of(lines.Select(line => (line.AmountMinor, line.TaxBp))), shop.Country, shop.Currency),
                (say.Total, Money(lines.Sum(line => line.AmountMinor))),
                .. Paid(tickets).Select(p => (say.Paid.Fill(("how", words.Of(p.Method)), ("day", words.Language.Day(p.PaidOn))), Money(-p.LaidMinor))),
                (say.ToPay, Money(tickets.Sum(ticket => ticket.OpenMinor))),
            ],
        };
    }

    /// <summary>Of restrings that were sold in advance.</summary>
    public static Sheet Of(PrepaidStore.Sale sale, ShopDetails shop, PriceList list)
    {
        var words = PaperWords.In(sale.Language ?? shop.Language);
        var say = words.Say;
        var (amount, day) = (words.Language.Money(sale.AmountMinor, shop), words.Language.Day(sale.BoughtOn));
        return new Sheet
        {
            Language = words.Language.Code,
            Title = say.PrepaidReceipt,
            From = From(shop),
            To = [sale.Name],
            Facts = [(say.Bought, day), .. TaxNumber(list, say)],
            Rows = [new SheetRow(words.Restrings(sale.Restrings, sale.Covers), amount)],
            Sums =
            [
                .. words.Taxes(Tax.Of([(sale.AmountMinor, sale.TaxBp)]), shop.Country, shop.Currency),
                (say.Total, amount),
                (say.Paid.Fill(("how", words.Of(sale.Method)), ("day", day)), words.Language.Money(-sale.AmountMinor, shop)),
                (say.ToPay, words.Language.Money(0, shop)),
            ],
        };
    }

    private static IReadOnlyList<string> From(ShopDetails shop) =>
        BillPaper.From(new BillSender { Name = shop.Name, Street = shop.Street, Town = shop.Town, Phone = shop.Phone, Mail = shop.Mail });

    private static (string, string)[] TaxNumber(PriceList list, OwnPagePaperPhrases say) => list.TaxNumber.Length > 0 ? [(say.TaxNumber, list.TaxNumber)] : [];

    /// <summary>A payment for several tickets is one line.</summary>
    private static IEnumerable<PaymentStore.Row> Paid(IEnumerable<Ticket> tickets) => tickets.SelectMany(ticket => ticket.Payments)
        .Where(p => p is { IsUndone: false, UndoesId: null } && p.LaidMinor != 0)
        .GroupBy(p => p.Id)
        .Select(same => same.First() with { LaidMinor = same.Sum(p => p.LaidMinor) });

    private static IEnumerable<SheetRow> Rows(Ticket ticket, ShopDetails shop, PaperWords words, bool withHeading)
    {
        if (withHeading)
            yield return new SheetRow(words.List([words.Say.Ticket.Fill(("ticket", $"{ticket.Job.Ticket}")), words.Whose(ticket.Job.Player, ticket.Job.Number), .. Days(ticket.Job, words)]), "") { IsHeading = true };
        foreach (var line in ticket.Lines)
            yield return new SheetRow(words.Of(line, shop.Currency), words.Language.Money(line.AmountMinor, shop));
    }

    private static IEnumerable<string> Days(JobRow job, PaperWords words) =>
        new[] { (words.Say.StrungOn, job.StrungOn), (words.Say.DoneOn, job.DoneOn), (words.Say.CollectedOn, job.DoneOn is null ? job.CollectedOn : null) }
            .Where(day => day.Item2 is not null).Select(day => words.On(day.Item1, day.Item2!.Value));

    private static IEnumerable<(string Name, string Value)> Facts(JobRow job, PaperWords words)
    {
        var (say, language) = (words.Say, words.Language);
        yield return (say.Racket, words.Whose(job.Player, job.Number));
        if (job.StrungOn is { } strung)
            yield return (say.Strung, language.Day(strung));
        if (job.DoneOn is { } done)
            yield return (say.Done, language.Day(done));
        else if (job.CollectedOn is { } collected)
            yield return (say.Collected, language.Day(collected));
    }
}
