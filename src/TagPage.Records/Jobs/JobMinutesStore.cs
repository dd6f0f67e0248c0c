using Dapper;
using TagPage.Core.EventDesk;
using TagPage.Core.Sports;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>Learns from start to strung how long a racket takes.</summary>
public sealed class JobMinutesStore(Database database)
{
    /// <summary>Older ones say less about today's hands and machine.</summary>
    private const int Newest = 200;

    public JobMinutes Learned() => new(database.Read(c => c.Query<Timed>(TimedSql, new { Newest }).AsList())
        .GroupBy(job => (job.Sport, job.IsHybrid))
        .ToDictionary(kind => kind.Key, kind => LearnedMinutes.From(kind.Select(job => job.Minutes))));

    private sealed record Timed
    {
        public Sport Sport { get; init; }
        public bool IsHybrid { get; init; }
        public double Minutes { get; init; }
    }

    internal const string TimedSql = """
        SELECT r.sport, j.mains_id <> j.crosses_id AS is_hybrid, (unixepoch(j.strung_at) - unixepoch(j.started_at)) / 60.0 AS minutes
        FROM job j
        JOIN racket r ON r.id = j.racket_id
        WHERE j.strung_at IS NOT NULL AND j.strung_on IS NOT NULL
        ORDER BY j.strung_at DESC
        LIMIT @Newest
        """;
}
