using TagPage.Core.Forecast;

namespace TagPage.Web.Pages.Shop.Bench;

/// <summary>Who is due, household by household: past its date first, then due soon.</summary>
/// <param name="Households">The most urgent first.</param>
/// <param name="Unseen">Clients that were left out because they have not been seen for long.</param>
/// <param name="Silent">Clients that were left out because they want no reminders.</param>
public sealed record DueList(IReadOnlyList<Household> Households, int Unseen, int Silent)
{
    public int Rackets => Households.Sum(h => h.Rackets.Count);

    public static DueList Of(IEnumerable<DueRow> rows, DateOnly today, StartingValues values, bool withLeftOut)
    {
        var all = rows
            .Select(row => new DueRacket(row, row.Work(today, values)))
            .Where(due => due.By.IsDue)
            .GroupBy(due => due.Racket.ClientId)
            .Select(client => new Household([.. client.OrderBy(due => due.By.DaysLeft).ThenBy(due => due.Racket.Player).ThenBy(due => due.Racket.Number)]))
            .ToList();
        var shown = all.Where(h => withLeftOut || h.Client is { Seen: true, Reminders: true }).OrderBy(h => h.DaysLeft).ThenBy(h => h.Client.ClientId);
        return withLeftOut
            ? new DueList([.. shown], 0, 0)
            : new DueList([.. shown], all.Count(h => h.Client is { Seen: false, Reminders: true }), all.Count(h => !h.Client.Reminders));
    }
}
