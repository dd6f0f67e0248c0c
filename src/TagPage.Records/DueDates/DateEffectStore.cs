using Dapper;
using TagPage.Core.Forecast;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.DueDates;

/// <summary>Works out what other starting values would change, before anything is saved.</summary>
public sealed class DateEffectStore(Database database, ShopStore shops, ShopClock clock)
{
    private const int AtOnce = 2000;

    public DateEffect Of(StartingValues then) => database.Read(c =>
    {
        var (effect, today, now) = (new DateEffect(), clock.Today, shops.Get().StartingValues);
        long after = 0;
        while (Histories.Into(c, c.Query<EffectRow>(Sql, new { after, AtOnce })) is { Count: > 0 } rows)
        {
            effect.Add(rows, today, now, then);
            after = rows[^1].RacketId;
        }
        return effect;
    });

    private const string Sql = $"""
        SELECT {ForecastRow.Columns}, r.number, p.name AS player
        FROM racket r
        JOIN forecast f ON f.racket_id = r.id
        JOIN player p ON p.id = r.player_id
        WHERE r.id > @after AND r.state IN ('InTurn', 'Spare') AND f.strung_on IS NOT NULL AND f.ended_on IS NULL
        ORDER BY r.id
        LIMIT @AtOnce
        """;
}
