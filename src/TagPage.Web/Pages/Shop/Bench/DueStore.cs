using Dapper;
using TagPage.Web.Data;
using TagPage.Web.Pages.Nudge;

namespace TagPage.Web.Pages.Shop.Bench;

/// <summary>All rackets that could be due, in one query; the forecast itself is worked out row by row.</summary>
public sealed class DueStore(Database database, ShopStore shops, ShopClock clock)
{
    public DueList List(bool withUnseen)
    {
        var (today, shop) = (clock.Today, shops.Get());
        var seenSince = today.AddMonths(-shop.UnseenMonths);
        return DueList.Of(database.Read(c => c.Query<DueRow>(ListSql, new { seenSince, today }).ToList()), today, shop.StartingValues, withUnseen);
    }

    /// <summary>The same of one client.</summary>
    internal const string OfClientSql = ListSql + "\n  AND c.id = @client";

    private const string ListSql = $"""
        WITH seen AS (
          SELECT DISTINCT p.client_id
          FROM job j JOIN racket r ON r.id = j.racket_id JOIN player p ON p.id = r.player_id
          WHERE j.received_on >= @seenSince)
        SELECT {ForecastRow.Columns}, r.number, r.frame, r.tape_colour, p.name AS player,
               c.id AS client_id, c.name AS client, c.phone, c.reminders, h.id AS nudge_id, COALESCE(h.sent_at, h.made_at) AS reminded_at, h.sent_at IS NOT NULL AS is_sent, c.id IN (SELECT client_id FROM seen) AS seen
        FROM forecast f
        JOIN racket r ON r.id = f.racket_id
        JOIN player p ON p.id = r.player_id
        JOIN client c ON c.id = p.client_id
        LEFT JOIN nudge h ON h.id = (SELECT MAX(n.id) FROM nudge n WHERE n.client_id = c.id AND {NudgeStore.Reminded})
        WHERE f.state IN ('InTurn', 'Spare') AND f.strung_on IS NOT NULL AND f.ended_on IS NULL
          AND (r.not_before IS NULL OR r.not_before <= @today)
          AND f.racket_id NOT IN (SELECT racket_id FROM job WHERE state IN ('Waiting', 'OnMachine', 'Strung'))
        """;
}
