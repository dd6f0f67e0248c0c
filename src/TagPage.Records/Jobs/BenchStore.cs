using Dapper;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>What is at the bench, and what came in on a day.</summary>
public sealed class BenchStore(Database database)
{
    /// <summary>More lines of one kind than this are no longer a bench.</summary>
    public const int Most = 200;

    /// <summary>On the machine first, then what waits: by the day it is promised for, then by ticket; what is still to be brought last.</summary>
    public IReadOnlyList<JobRow> Open() => database.Read(c => c.Query<JobRow>(OpenSql, new { Most }).ToList());

    /// <summary>Those of the open ones whose client was promised a day on which the shop is closed.</summary>
    public IReadOnlyList<JobRow> PromisedClosed(Opening opening, DateOnly today) => [.. Open().Where(job => job.IsPromisedClosed(opening, today))];

    /// <summary>Named with 'Strung', as the index of the bench has it.</summary>
    internal const string OpenSql = $"""
        SELECT {JobRow.Columns}
        FROM job_card
        WHERE state IN ('Waiting', 'OnMachine', 'Strung') AND state <> 'Strung'
        ORDER BY expected, state, promised_for IS NULL, promised_for, ticket
        LIMIT @Most
        """;

    /// <summary>Strung and not collected yet, the longest waiting first.</summary>
    public IReadOnlyList<JobRow> Ready() => database.Read(c => c.Query<JobRow>(ReadySql, new { Most }).ToList());

    internal const string ReadySql = $"""
        SELECT {JobRow.Columns}
        FROM job_card
        WHERE state IN ('Waiting', 'OnMachine', 'Strung') AND state = 'Strung'
        ORDER BY COALESCE(strung_on, done_on), ticket
        LIMIT @Most
        """;

    /// <summary>More than this are counted and not listed.</summary>
    public const int MostCameIn = 40;

    /// <summary>How many came in on a day, and the newest of them; without visits that are over.</summary>
    public (int Count, IReadOnlyList<JobRow> Newest) CameIn(DateOnly day) => database.Read(c =>
        (c.ExecuteScalar<int>(CameInCountSql, new { day }), c.Query<JobRow>(CameInSql, new { day, Most = MostCameIn }).ToList()));

    private const string CameInCountSql = $"SELECT COUNT(*) FROM {CameInOf}";

    private const string CameInOf = """
        job j WHERE j.received_on = @day AND j.state <> 'Cancelled' AND NOT (j.mains_id IS NULL AND j.state = 'Collected') AND NOT EXISTS (SELECT 1 FROM job_request q WHERE q.job_id = j.id AND q.expected = 1)
        """;

    // Only those that are shown are looked up with all that the card has.
    internal const string CameInSql = $"""
        SELECT {JobRow.Columns}
        FROM job_card
        WHERE id IN (SELECT j.id FROM {CameInOf} ORDER BY j.ticket DESC LIMIT @Most)
        ORDER BY ticket DESC
        """;

    /// <summary>What a new shop still lacks.</summary>
    public sealed record Beginning
    {
        public bool HasStrings { get; init; }
        public bool HasRackets { get; init; }

        public bool IsOver => HasStrings && HasRackets;
    }

    public Beginning Begun() => database.Read(c => c.QuerySingle<Beginning>(BegunSql));

    private const string BegunSql = """
        SELECT EXISTS (SELECT 1 FROM string_kind) AS has_strings, EXISTS (SELECT 1 FROM racket) AS has_rackets
        """;
}
