using TagPage.Core.Forecast;

namespace TagPage.Web.Pages.Shop.Bench;

/// <summary>Who is due, household by household: past its date first, then due soon.</summary>
/// <param name="Households">The most urgent first.</param>
/// <param name="Unseen">Clients that were left out because they have not been seen for long.</param>
public sealed record DueList(IReadOnlyList<Household> Households, int Unseen)
{
    public int Rackets => Households.Sum(h => h.Rackets.Count);

    public static DueList Of(IEnumerable<DueRow> rows, DateOnly today, StartingValues values, bool withUnseen)
    {
        var all = rows
            .Select(row => new DueRacket(row, row.Work(today, values)))
            .Where(due => due.By.State is RestringState.Past or RestringState.DueSoon)
            .GroupBy(due => due.Racket.ClientId)
            .Select(client => new Household([.. client.OrderBy(due => due.By.DaysLeft).ThenBy(due => due.Racket.Player).ThenBy(due => due.Racket.Number)]))
            .ToList();
        var shown = all.Where(h => withUnseen || h.Client.Seen).OrderBy(h => h.DaysLeft).ThenBy(h => h.Client.ClientId);
        return new DueList([.. shown], withUnseen ? 0 : all.Count(h => !h.Client.Seen));
    }
}
