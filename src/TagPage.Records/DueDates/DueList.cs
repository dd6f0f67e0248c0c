using TagPage.Core.Forecast;

namespace TagPage.Records.DueDates;

/// <summary>Who is due, household by household: past its date first, then due soon. One page of it.</summary>
/// <param name="Households">The most urgent first.</param>
public sealed record DueList(IReadOnlyList<Household> Households)
{
    public static DueList Empty { get; } = new([]);

    /// <summary>All households of all pages, and their rackets that are due.</summary>
    public int Clients { get; init; }
    public int Rackets { get; init; }

    /// <summary>There are more than were counted.</summary>
    public bool MoreThanCounted { get; init; }

    public string RacketsShown => Shown(Rackets, MoreThanCounted);

    public string ClientsShown => Shown(Clients, MoreThanCounted);

    /// <summary>Clients left out because they have not been seen for a long time.</summary>
    public int Unseen { get; init; }

    /// <summary>Clients that were left out because they want no reminders.</summary>
    public int Silent { get; init; }

    public bool MoreUnseen { get; init; }

    public bool MoreSilent { get; init; }

    public string UnseenShown => InWords(Unseen, MoreUnseen);

    public string SilentShown => InWords(Silent, MoreSilent);

    private static string InWords(int clients, bool more) => clients == 1 && !more ? "1 client" : $"{Shown(clients, more)} clients";

    private static string Shown(int count, bool more) => $"{Math.Min(count, DueStore.MostCounted)}{(more ? "+" : "")}";

    /// <summary>Where the next page begins; null on the last one.</summary>
    public DueKey? Next { get; init; }

    public static IReadOnlyList<Household> Group(IEnumerable<DueRow> rows, DateOnly today, StartingValues values) =>
        [.. rows.Select(row => new DueRacket(row, row.Work(today, values)))
            .Where(due => due.By.IsDue)
            .GroupBy(due => due.Racket.ClientId)
            .Select(client => new Household([.. client.OrderBy(due => due.By.DaysLeft).ThenBy(due => due.Racket.Player).ThenBy(due => due.Racket.Number)]))
            .OrderBy(h => h.DaysLeft).ThenBy(h => h.Client.ClientId)];
}
