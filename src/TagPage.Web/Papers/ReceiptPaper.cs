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
    public static Sheet Of(JobRow job, IReadOnlyList<ChargeLine> lines, IReadOnlyList<PaymentStore.Row> payments, ShopDetails shop, PriceList list)
    {
        string Money(long minor) => Formats.Money(minor, shop);
        var price = lines.Sum(line => line.AmountMinor);
        return new Sheet
        {
            Title = $"Receipt for ticket {job.Ticket}",
            From = BillPaper.From(new BillSender { Name = shop.Name, Street = shop.Street, Town = shop.Town, Phone = shop.Phone, Mail = shop.Mail }),
            To = [job.Payer ?? job.Client],
            Facts = [.. Facts(job, list)],
            Rows = [.. lines.Select(line => new SheetRow(PriceWords.Of(line, shop), Formats.Money(line.AmountMinor, shop)))],
            Sums =
            [
                .. Tax.Of(lines.Select(line => (line.AmountMinor, line.TaxBp))).Where(part => part.BasisPoints > 0).SelectMany(part => BillPaper.TaxRows(part, Money)),
                ("Total", Money(price)),
                .. payments.Where(p => p is { IsUndone: false, UndoesId: null } && p.LaidMinor != 0).Select(p => ($"Paid, {PriceWords.Of(p.Method)}, {Formats.Day(p.PaidOn)}", Money(-p.LaidMinor))),
                ("To pay", Money(job.PaidOn is null ? price - job.LaidMinor : 0)),
            ],
        };
    }

    private static IEnumerable<(string, string)> Facts(JobRow job, PriceList list)
    {
        yield return ("Racket", $"{job.Player}, {job.Number}");
        if (job.StrungOn is { } strung)
            yield return ("Strung", Formats.Day(strung));
        if (job.CollectedOn is { } collected)
            yield return ("Collected", Formats.Day(collected));
        if (list.TaxNumber.Length > 0)
            yield return ("Tax number", list.TaxNumber);
    }
}
