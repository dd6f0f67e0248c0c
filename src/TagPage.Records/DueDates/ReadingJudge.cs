using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Forecast;
using TagPage.Core.Forecast.Learning;

namespace TagPage.Records.DueDates;

/// <summary>Looks at each new reading once: one that lies far from what was expected of its strings teaches nothing.</summary>
internal static class ReadingJudge
{
    private sealed record New
    {
        public long Id { get; init; }
        public long JobId { get; init; }
        public long PlayerId { get; init; }
    }

    /// <summary>True where something was judged. In the order of their days: the earlier ones say what to expect of the later.</summary>
    public static bool Judge<T>(SqliteConnection connection, List<T> rackets, string players, StartingValues values) where T : ForecastRow
    {
        var judged = new List<object>();
        foreach (var player in connection.Query<New>(NewSql, new { players }).GroupBy(reading => reading.PlayerId))
        {
            var jobs = rackets.First(row => row.PlayerId == player.Key).History.Jobs.ToList();
            foreach (var reading in player)
                if (Judge(jobs, reading, values) is { } doubtful)
                    judged.Add(new { reading.Id, doubtful });
        }
        connection.Execute("UPDATE reading SET doubtful = @doubtful WHERE id = @Id", judged);
        return judged.Count > 0;
    }

    // Null where it cannot be compared with the first one: it teaches nothing anyway.
    private static bool? Judge(List<JobHistory> jobs, New reading, StartingValues values)
    {
        var at = jobs.FindIndex(job => job.Id == reading.JobId);
        if (at < 0 || jobs[at].Readings.FirstOrDefault(r => r.IsFirst) is not { } first
            || jobs[at].Readings.FirstOrDefault(r => r.Id == reading.Id) is not { } read || read.LossSince(first) is not { } loss)
            return null;
        var doubtful = Expectation.Of(jobs, jobs[at], loss, values).IsDoubtful(loss.Percent);
        jobs[at] = jobs[at] with { Readings = [.. jobs[at].Readings.Select(r => r.Id == read.Id ? r with { IsDoubtful = doubtful } : r)] };
        return doubtful;
    }

    private const string NewSql = """
        SELECT g.id, g.job_id, r.player_id
        FROM racket r
        JOIN job j ON j.racket_id = r.id AND j.strung_on IS NOT NULL
        JOIN reading g ON g.job_id = j.id
        WHERE r.player_id IN (SELECT value FROM json_each(@players)) AND g.first = 0 AND g.doubtful IS NULL
        ORDER BY g.taken_on, g.taken_at, g.id
        """;
}
