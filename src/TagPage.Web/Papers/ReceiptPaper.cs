using TagPage.Core.Money;
using TagPage.Labels.Papers;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Web.Words;

namespace TagPage.Web.Papers;

/// <summary>What a client takes along with a racket: what it cost, what was paid, what is still to be paid.</summary>
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
        string Money(long minor) => Formats.Money(minor, shop);
        var (first, lines) = (tickets[0].Job, tickets.SelectMany(ticket => ticket.Lines).ToList());
        return new Sheet
        {
            Title = tickets.Count == 1 ? $"Receipt for ticket {first.Ticket}" : $"Receipt for {tickets.Count} tickets",
            From = BillPaper.From(new BillSender { Name = shop.Name, Street = shop.Street, Town = shop.Town, Phone = shop.Phone, Mail = shop.Mail }),
            To = [first.Payer ?? first.Client],
            Facts = [.. tickets.Count == 1 ? Facts(first) : [], .. list.TaxNumber.Length > 0 ? [("Tax number", list.TaxNumber)] : Array.Empty<(string, string)>()],
            Rows = [.. tickets.SelectMany(ticket => Rows(ticket, shop, withHeading: tickets.Count > 1))],
            Sums =
            [
                .. Tax.Of(lines.Select(line => (line.AmountMinor, line.TaxBp))).Where(part => part.BasisPoints > 0).SelectMany(part => BillPaper.TaxRows(part, Money)),
                ("Total", Money(lines.Sum(line => line.AmountMinor))),
                .. Paid(tickets).Select(p => ($"Paid, {PriceWords.Of(p.Method)}, {Formats.Day(p.PaidOn)}", Money(-p.LaidMinor))),
                ("To pay", Money(tickets.Sum(ticket => ticket.OpenMinor))),
            ],
        };
    }

    /// <summary>A payment for several tickets is one line.</summary>
    private static IEnumerable<PaymentStore.Row> Paid(IEnumerable<Ticket> tickets) => tickets.SelectMany(ticket => ticket.Payments)
        .Where(p => p is { IsUndone: false, UndoesId: null } && p.LaidMinor != 0)
        .GroupBy(p => p.Id)
        .Select(same => same.First() with { LaidMinor = same.Sum(p => p.LaidMinor) });

    private static IEnumerable<SheetRow> Rows(Ticket ticket, ShopDetails shop, bool withHeading)
    {
        if (withHeading)
            yield return new SheetRow($"Ticket {ticket.Job.Ticket}, {string.Join(", ", Facts(ticket.Job).Select(fact => $"{fact.Name.ToLowerInvariant()} {fact.Value}"))}", "") { IsHeading = true };
        foreach (var line in ticket.Lines)
            yield return new SheetRow(PriceWords.Of(line, shop), Formats.Money(line.AmountMinor, shop));
    }

    private static IEnumerable<(string Name, string Value)> Facts(JobRow job)
    {
        yield return ("Racket", $"{job.Player}, {job.Number}");
        if (job.StrungOn is { } strung)
            yield return ("Strung", Formats.Day(strung));
        if (job.DoneOn is { } done)
            yield return ("Done", Formats.Day(done));
        else if (job.CollectedOn is { } collected)
            yield return ("Collected", Formats.Day(collected));
    }
}
