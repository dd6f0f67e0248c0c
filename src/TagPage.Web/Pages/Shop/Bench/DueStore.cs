using System.Text.Json;
using Dapper;
using TagPage.Web.Data;
using TagPage.Web.Data.Dates;
using TagPage.Web.Pages.Nudge;

namespace TagPage.Web.Pages.Shop.Bench;

/// <summary>Who is due, found and sorted by the date kept at the racket; worked out with reasons only for those shown.</summary>
public sealed class DueStore(Database database, ShopStore shops, ShopClock clock)
{
    /// <summary>Households on a page.</summary>
    public const int APage = 40;

    private sealed record Place
    {
        public long ClientId { get; init; }
        public DateOnly Due { get; init; }
        public int Rackets { get; init; }
        public bool Reminders { get; init; }
        public bool Seen { get; init; }

        public DueKey Key => new(Due, ClientId);

        public bool IsAfter(DueKey? key) => key is null || (Due, ClientId).CompareTo((key.Due, key.ClientId)) > 0;
    }

    /// <param name="withUnseen">Those too who have not been seen for long or want no reminders.</param>
    /// <param name="after">The last household of the page before.</param>
    /// <param name="most">Households to show.</param>
    public DueList List(bool withUnseen, DueKey? after = null, int most = APage) => database.Read(c =>
    {
        var (today, shop) = (clock.Today, shops.Get());
        var seenSince = today.AddMonths(-shop.UnseenMonths);
        var all = c.Query<Place>(PlacesSql, new { today, seenSince }).AsList();
        var listed = all.Where(place => withUnseen || place is { Seen: true, Reminders: true }).ToList();
        var page = listed.Where(place => place.IsAfter(after)).Take(most).ToList();
        var clients = JsonSerializer.Serialize(page.Select(place => place.ClientId));
        var rows = Histories.Into(c, c.Query<DueRow>(OfClientsSql, new { clients, seenSince, today }));
        return new DueList(DueList.Group(rows, today, shop.StartingValues))
        {
            Clients = listed.Count,
            Rackets = listed.Sum(place => place.Rackets),
            Unseen = withUnseen ? 0 : all.Count(place => place is { Seen: false, Reminders: true }),
            Silent = withUnseen ? 0 : all.Count(place => !place.Reminders),
            Next = page.Count > 0 && page[^1] != listed[^1] ? page[^1].Key : null,
        };
    });

    private const string Seen = """
        EXISTS (SELECT 1 FROM player s JOIN racket o ON o.player_id = s.id JOIN job j ON j.racket_id = o.id
                WHERE s.client_id = c.id AND j.received_on >= @seenSince)
        """;

    /// <summary>SQL: <c>racket r</c> may be asked for: not at the bench, and not put off by its client.</summary>
    private const string Free = """
        (r.not_before IS NULL OR r.not_before <= @today)
          AND NOT EXISTS (SELECT 1 FROM job b WHERE b.racket_id = r.id AND b.state IN ('Waiting', 'OnMachine', 'Strung'))
        """;

    private const string PlacesSql = $"""
        SELECT c.id AS client_id, MIN(r.due_on) AS due, COUNT(*) AS rackets, c.reminders, {Seen} AS seen
        FROM racket r
        JOIN player p ON p.id = r.player_id
        JOIN client c ON c.id = p.client_id
        WHERE r.soon_on <= @today AND {Free}
        GROUP BY c.id
        ORDER BY due, c.id
        """;

    /// <summary>What could be due of one client.</summary>
    internal const string OfClientSql = RowsSql + "\n  AND c.id = @client";

    private const string OfClientsSql = RowsSql + "\n  AND r.soon_on <= @today AND c.id IN (SELECT value FROM json_each(@clients))";

    private const string RowsSql = $"""
        SELECT {ForecastRow.Columns}, r.number, r.frame, r.tape_colour, p.name AS player,
               c.id AS client_id, c.name AS client, c.phone, c.reminders, h.id AS nudge_id, COALESCE(h.sent_at, h.made_at) AS reminded_at, h.sent_at IS NOT NULL AS is_sent, {Seen} AS seen
        FROM client c
        JOIN player p ON p.client_id = c.id
        JOIN racket r ON r.player_id = p.id
        JOIN forecast f ON f.racket_id = r.id
        LEFT JOIN nudge h ON h.id = (SELECT MAX(n.id) FROM nudge n WHERE n.client_id = c.id AND {NudgeStore.Reminded})
        WHERE f.state IN ('InTurn', 'Spare') AND f.strung_on IS NOT NULL AND f.ended_on IS NULL
          AND {Free}
        """;
}
