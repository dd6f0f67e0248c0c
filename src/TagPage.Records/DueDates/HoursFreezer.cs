using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Forecast;

namespace TagPage.Records.DueDates;

/// <summary>Records the hours played on strings that came out, and at each reading, so that later habits do not change them.</summary>
internal static class HoursFreezer
{
    private sealed record Open
    {
        public long Id { get; init; }
        public long RacketId { get; init; }
        public DateOnly StrungOn { get; init; }
        public DateOnly Day { get; init; }
    }

    /// <summary>True if something was recorded.</summary>
    public static bool Freeze<T>(SqliteConnection connection, List<T> rackets, string players, StartingValues values) where T : ForecastRow
    {
        var racket = rackets.ToDictionary(row => row.RacketId);
        var jobs = connection.Query<Open>(JobsSql, new { players }).AsList();
        var readings = connection.Query<Open>(ReadingsSql, new { players }).AsList();
        return (jobs.Count > 0 && connection.Execute(JobSql, Hours(jobs)) > 0) | (readings.Count > 0 && connection.Execute(ReadingSql, Hours(readings)) > 0);

        List<(long Id, double Hours)> Known(List<Open> open) =>
            [.. open.Select(o => (o.Id, racket[o.RacketId].HoursBy(o.StrungOn, o.Day, values))).Where(o => o.Item2 is not null).Select(o => (o.Id, o.Item2!.Value))];

        IEnumerable<object> Hours(List<Open> open) => Known(open).Select(o => new { o.Id, o.Hours });
    }

    private const string JobsSql = """
        SELECT j.id, j.racket_id, j.strung_on, j.ended_on AS day
        FROM racket r
        JOIN job j ON j.racket_id = r.id
        WHERE r.player_id IN (SELECT value FROM json_each(@players)) AND j.ended_on IS NOT NULL AND j.hours_played IS NULL
        """;

    private const string JobSql = "UPDATE job SET hours_played = @Hours WHERE id = @Id";

    private const string ReadingsSql = """
        SELECT g.id, j.racket_id, j.strung_on, g.taken_on AS day
        FROM racket r
        JOIN job j ON j.racket_id = r.id AND j.strung_on IS NOT NULL
        JOIN reading g ON g.job_id = j.id
        WHERE r.player_id IN (SELECT value FROM json_each(@players)) AND g.hours IS NULL
        """;

    private const string ReadingSql = "UPDATE reading SET hours = @Hours WHERE id = @Id";
}
