using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Forecast;
using TagPage.Records.Storage;

namespace TagPage.Records.DueDates;

/// <summary>
/// The restring-by date kept at each racket. Triggers mark the players whose dates may have moved; before a transaction
/// ends their rackets are worked out again, so no committed date is older than what it depends on. What a change of
/// settings or a new day touches is left to the background work.
/// </summary>
public sealed class DueDateKeeper(Database database, TimeProvider clock)
{
    private const int PlayersAtOnce = 400;

    /// <summary>From here on every write keeps the dates up to date.</summary>
    public void Attach() => database.BeforeCommit += Refresh;

    /// <summary>How many players are still to be worked out in the background, and of how many.</summary>
    public (long Left, long All) Progress() =>
        database.Read(c => c.QuerySingle<(long Left, long All)>("SELECT (SELECT COUNT(*) FROM due_again), (SELECT COUNT(*) FROM player)"));

    /// <summary>Works out some of those that were left for later; false where none were.</summary>
    public bool RefreshLater() => database.Write(c =>
    {
        var players = c.Query<long>("SELECT player_id FROM due_again WHERE in_background = 1 LIMIT @PlayersAtOnce", new { PlayersAtOnce }).AsList();
        if (players.Count > 0)
            Refresh(c, players, ForecastSettings.Of(c));
        return players.Count > 0;
    });

    /// <summary>Marks everybody on the shop's new day: where hours are logged, dates move with the days.</summary>
    public void BeginDay()
    {
        if (database.Read(c => c.QuerySingleOrDefault<DateOnly?>(DaySql) == ForecastSettings.Of(c).DayOf(clock.GetUtcNow())))
            return;
        database.Write(c => c.Execute(BeginDaySql, new { today = ForecastSettings.Of(c).DayOf(clock.GetUtcNow()) }));
    }

    private const string DaySql = "SELECT day FROM due_day WHERE id = 1";

    private const string BeginDaySql = """
        INSERT INTO due_day (id, day) VALUES (1, @today) ON CONFLICT (id) DO UPDATE SET day = excluded.day;
        INSERT INTO due_again (player_id, in_background) SELECT id, 1 FROM player WHERE true ON CONFLICT DO NOTHING;
        """;

    private void Refresh(SqliteConnection connection)
    {
        var players = connection.Query<long>("SELECT player_id FROM due_again WHERE in_background = 0").AsList();
        if (players.Count == 0)
            return;
        var settings = ForecastSettings.Of(connection);
        foreach (var some in players.Chunk(PlayersAtOnce))
            Refresh(connection, some, settings);
    }

    private void Refresh(SqliteConnection connection, IEnumerable<long> some, ForecastSettings settings)
    {
        var players = JsonSerializer.Serialize(some);
        var today = settings.DayOf(clock.GetUtcNow());
        connection.Execute(LeaveSql, new { players, today });
        var rows = Rows(connection, players);
        if (HoursFreezer.Freeze(connection, rows, players, settings.StartingValues))
            Histories.Into(connection, rows);
        if (ReadingJudge.Judge(connection, rows, players, settings.StartingValues))
            Histories.Into(connection, rows);
        var dates = rows.Select(row => (Row: row, By: row.Work(today, settings.StartingValues))).ToList();
        connection.Execute(KeepSql, dates.Where(d => !d.Row.Keeps(d.By)).Select(d => new { d.Row.RacketId, d.By.Due, d.By.SoonOn, Because = d.By.DecidedBy?.ToString() }));
        connection.Execute(LabelSql, dates.Where(d => d is { Row: { BedId: not null, LabelDate: null }, By.Due: not null } && d.Row.StrungOn >= today.AddDays(-1)).Select(d => new { d.Row.BedId, d.By.Due }));
        connection.Execute("DELETE FROM due_again WHERE player_id IN (SELECT value FROM json_each(@players))", new { players });
    }

    // Since when a racket is no longer played, and as what it was: until then it took its part of the play.
    private const string LeaveSql = """
        UPDATE racket SET played_as = state, left_on = NULL
        WHERE player_id IN (SELECT value FROM json_each(@players)) AND state IN ('InTurn', 'Spare')
          AND (played_as IS NOT state OR left_on IS NOT NULL);
        UPDATE racket SET left_on = @today
        WHERE player_id IN (SELECT value FROM json_each(@players)) AND state NOT IN ('InTurn', 'Spare')
          AND played_as IS NOT NULL AND left_on IS NULL;
        """;

    private static List<KeptRow> Rows(SqliteConnection connection, string players) =>
        Histories.Into(connection, connection.Query<KeptRow>(RowsSql, new { players }));

    private sealed record KeptRow : ForecastRow
    {
        public DateOnly? DueOn { get; init; }
        public DateOnly? DueSoonOn { get; init; }
        public LimitKind? DueBecause { get; init; }

        public bool Keeps(RestringBy by) => (DueOn, DueSoonOn, DueBecause) == (by.Due, by.SoonOn, by.DecidedBy);
    }

    private const string RowsSql = $"""
        SELECT {ForecastRow.Columns}, r.due_on, r.due_soon_on, r.due_because
        FROM racket r
        JOIN forecast f ON f.racket_id = r.id
        WHERE r.player_id IN (SELECT value FROM json_each(@players))
        """;

    private const string KeepSql = "UPDATE racket SET due_on = @Due, due_soon_on = @SoonOn, due_because = @Because WHERE id = @RacketId";

    // A label is printed with the strings: its date is the first one that was worked out for them. Strings typed in later, or in
    // again after newer ones, got no label that this program knows of.
    private const string LabelSql = "UPDATE job SET label_date = @Due WHERE id = @BedId AND label_date IS NULL";
}
