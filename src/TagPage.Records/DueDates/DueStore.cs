using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.DueDates;

/// <summary>Who is due, found and sorted by the date kept at the racket; worked out with reasons only for those shown.</summary>
public sealed class DueStore(Database database, ShopStore shops, ShopClock clock)
{
    /// <summary>Households on a page.</summary>
    public const int APage = 40;

    /// <summary>Rackets of one kind that are counted; what goes beyond is "more than so many".</summary>
    public const int MostCounted = 1000;

    private sealed record Sum
    {
        public int Clients { get; init; }
        public int Rackets { get; init; }
        public int Unseen { get; init; }
        public int Silent { get; init; }
        public bool MoreThanCounted { get; init; }
        public bool MoreUnseen { get; init; }
        public bool MoreSilent { get; init; }
    }

    /// <param name="withUnseen">Includes those who have not been seen for a long time or want no reminders.</param>
    /// <param name="after">The last household of the page before.</param>
    /// <param name="most">Households to show.</param>
    public DueList List(bool withUnseen, DueKey? after = null, int most = APage) => database.Read(c =>
    {
        var (today, shop) = (clock.Today, shops.Get());
        var seenSince = today.AddMonths(-shop.UnseenMonths);
        var places = Places(c, (today, seenSince, withUnseen), after, most + 1);
        var page = places.Take(most).ToList();
        var clients = JsonSerializer.Serialize(page.Select(place => place.ClientId));
        var rows = Histories.Into(c, c.Query<DueRow>(DueOfClientsSql, new { clients, seenSince, today }));
        var sum = c.QuerySingle<Sum>(SumSql, new { today, seenSince, withUnseen, MostCounted });
        return new DueList(DueList.Group(rows, today, shop.StartingValues))
        {
            Clients = sum.Clients,
            Rackets = sum.Rackets,
            MoreThanCounted = sum.MoreThanCounted,
            Unseen = withUnseen ? 0 : sum.Unseen,
            Silent = withUnseen ? 0 : sum.Silent,
            MoreUnseen = sum.MoreUnseen,
            MoreSilent = sum.MoreSilent,
            Next = places.Count > most ? page[^1] : null,
        };
    });

    /// <summary>Who is due, the most urgent first, without the reasons.</summary>
    public IReadOnlyList<long> Clients(int most) => database.Read(c =>
    {
        var today = clock.Today;
        return Places(c, (today, today.AddMonths(-shops.Get().UnseenMonths), false), after: null, most).ConvertAll(place => place.ClientId);
    });

    /// <summary>What is due of some clients by the dates kept, the most urgent first, without the reasons.</summary>
    public ILookup<long, KeptDue> Kept(IReadOnlyCollection<long> clients) => database.Read(c => c
        .Query<KeptDue>(KeptSql, new { clients = JsonSerializer.Serialize(clients), today = clock.Today })
        .ToLookup(racket => racket.ClientId));

    private static List<DueKey> Places(SqliteConnection connection, (DateOnly Today, DateOnly SeenSince, bool WithUnseen) who, DueKey? after, int most)
    {
        var asked = new { today = who.Today, seenSince = who.SeenSince, withUnseen = who.WithUnseen, due = after?.Due ?? DateOnly.MinValue, client = after?.ClientId ?? 0, most };
        return [.. connection.Query<(DateOnly Due, long ClientId)>(PlacesSql, asked).Select(place => new DueKey(place.Due, place.ClientId))];
    }

    private const string Seen = "c.seen_on >= @seenSince";

    /// <summary>SQL: a racket may be asked for: not at the bench, and not put off by its client.</summary>
    private static string Free(string racket) => $"""
        ({racket}.not_before IS NULL OR {racket}.not_before <= @today)
          AND NOT EXISTS (SELECT 1 FROM job b WHERE b.racket_id = {racket}.id AND b.state IN ('Waiting', 'OnMachine', 'Strung'))
        """;

    // Rackets in the order of their dates; each client stands at the first of theirs. The joins keep to that order.
    private static readonly string PlacesSql = $"""
        SELECT r.due_on AS due, c.id AS client_id
        FROM racket r
        CROSS JOIN player p ON p.id = r.player_id
        CROSS JOIN client c ON c.id = p.client_id
        WHERE r.due_on >= @due AND (r.due_on, c.id) > (@due, @client) AND r.due_soon_on <= @today
          AND (@withUnseen OR (c.reminders = 1 AND {Seen}))
          AND {Free("r")}
          AND NOT EXISTS (
            SELECT 1 FROM player q JOIN racket e ON e.player_id = q.id
            WHERE q.client_id = c.id AND e.due_soon_on <= @today AND (e.due_on, e.id) < (r.due_on, r.id) AND {Free("e")})
        ORDER BY r.due_on, c.id
        LIMIT @most
        """;

    // By player: asking for due_on as well would tempt the planner to walk along all dates for each of them.
    internal static readonly string KeptSql = $"""
        SELECT p.client_id, p.name AS player, r.number, r.due_on
        FROM player p
        CROSS JOIN racket r ON r.player_id = p.id
        WHERE p.client_id IN (SELECT value FROM json_each(@clients)) AND r.due_soon_on <= @today AND {Free("r")}
        ORDER BY r.due_on, r.id
        """;

    // Each kind is counted up to its own limit, so that many of one kind do not spoil the count of another.
    private static readonly string SumSql = $"""
        WITH shown AS ({CountedSql($"@withUnseen OR (c.reminders = 1 AND {Seen})")}),
             unseen AS ({CountedOfSql("c.reminders = 1 AND c.seen_on < @seenSince")}),
             silent AS ({CountedOfSql("c.reminders = 0")})
        SELECT (SELECT MIN(COUNT(*), @MostCounted) FROM shown) AS rackets,
               (SELECT COUNT(DISTINCT id) FROM shown) AS clients,
               (SELECT COUNT(*) > @MostCounted FROM shown) AS more_than_counted,
               (SELECT COUNT(DISTINCT id) FROM unseen) AS unseen,
               (SELECT COUNT(*) > @MostCounted FROM unseen) AS more_unseen,
               (SELECT COUNT(DISTINCT id) FROM silent) AS silent,
               (SELECT COUNT(*) > @MostCounted FROM silent) AS more_silent
        """;

    // Along the dates: most of those who are due are shown.
    private static string CountedSql(string which) => $"""
        SELECT c.id
        FROM racket r
        CROSS JOIN player p ON p.id = r.player_id
        CROSS JOIN client c ON c.id = p.client_id
        WHERE r.due_on IS NOT NULL AND r.due_soon_on <= @today AND ({which}) AND {Free("r")}
        LIMIT @MostCounted + 1
        """;

    // Along the clients: few were not seen for long, or want no reminders.
    private static string CountedOfSql(string clients) => $"""
        SELECT c.id
        FROM client c
        CROSS JOIN player p ON p.client_id = c.id
        CROSS JOIN racket r ON r.player_id = p.id
        WHERE NOT @withUnseen AND {clients} AND r.due_soon_on <= @today AND {Free("r")}
        LIMIT @MostCounted + 1
        """;

    private static readonly string RowsSql = $"""
        SELECT {ForecastRow.Columns}, r.number, r.frame, r.tape_colour, p.name AS player,
               c.id AS client_id, c.name AS client, c.phone, c.reminders, h.id AS reminder_id, COALESCE(h.sent_at, h.made_at) AS reminded_at,
               EXISTS (SELECT 1 FROM outbox o WHERE o.reminder_id = h.id AND o.state IN ('Queued', 'Leaving')) AS is_on_its_way,
               EXISTS (SELECT 1 FROM reminder n WHERE n.id = h.id AND {ReminderStore.Left}) AS is_sent, h.sent_at IS NOT NULL AS is_handed_over, {BatchStore.WaitsIn} AS batch_id, {Seen} AS seen
        FROM client c
        JOIN player p ON p.client_id = c.id
        JOIN racket r ON r.player_id = p.id
        JOIN forecast f ON f.racket_id = r.id
        LEFT JOIN reminder h ON h.id = (SELECT MAX(n.id) FROM reminder n WHERE n.client_id = c.id AND {ReminderStore.Reminded})
        WHERE f.state IN ('InTurn', 'Spare') AND f.strung_on IS NOT NULL AND f.ended_on IS NULL
          AND {Free("r")}
        """;

    /// <summary>What could be due of some clients.</summary>
    internal static readonly string OfClientsSql = RowsSql + "\n  AND c.id IN (SELECT value FROM json_each(@clients))";

    private static readonly string DueOfClientsSql = OfClientsSql + "\n  AND r.due_soon_on <= @today";
}
