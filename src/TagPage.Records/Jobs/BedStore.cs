using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Jobs;

namespace TagPage.Records.Jobs;

/// <summary>
/// The strings of one racket follow each other: what a stringing does to the strings before it. Runs in the caller's
/// transaction.
/// </summary>
public static class BedStore
{
    /// <summary>The strings in the racket, as long as nobody noted their end; null without any.</summary>
    public sealed record Open
    {
        public long JobId { get; init; }
        public long Ticket { get; init; }
        public DateOnly StrungOn { get; init; }
        public string Mains { get; init; } = "";
    }

    public static Open? Current(SqliteConnection connection, long racketId) =>
        connection.QuerySingleOrDefault<Open>(CurrentSql, new { racketId });

    private const string CurrentSql = """
        SELECT b.job_id, j.ticket, b.strung_on, m.name AS mains
        FROM bed b
        JOIN job j ON j.id = b.job_id
        JOIN string_kind m ON m.id = b.mains_id
        WHERE b.racket_id = @racketId AND b.ended_on IS NULL
        """;

    /// <summary>Strings of the same racket that a stringing would pass if its day were another; null where their order stays.</summary>
    public static (long Ticket, DateOnly StrungOn)? Passed(SqliteConnection connection, long racketId, long jobId, DateOnly was, DateOnly on) =>
        connection.QueryFirstOrDefault<PassedRow>(PassedSql, new { racketId, jobId, was, on }) is { } row ? (row.Ticket, row.StrungOn) : null;

    private sealed record PassedRow
    {
        public long Ticket { get; init; }
        public DateOnly StrungOn { get; init; }
    }

    private const string PassedSql = """
        SELECT ticket, strung_on
        FROM job
        WHERE racket_id = @racketId AND id <> @jobId AND strung_on IS NOT NULL
          AND ((strung_on, id) > (@on, @jobId)) <> ((strung_on, id) > (@was, @jobId))
        ORDER BY strung_on, id
        LIMIT 1
        """;

    /// <summary>Strings that went into the same racket on that day, which is not the job's so far; null without any.</summary>
    public static StrungSameDay? SameDay(SqliteConnection connection, long racketId, long jobId, DateOnly on) =>
        connection.ExecuteScalar<long?>(SameDaySql, new { racketId, jobId, on }) is { } ticket ? new StrungSameDay(ticket, on) : null;

    private const string SameDaySql = """
        SELECT MIN(n.ticket)
        FROM job n
        WHERE n.racket_id = @racketId AND n.id <> @jobId AND n.strung_on = @on
          AND (SELECT strung_on FROM job WHERE id = @jobId) IS NOT @on
        """;

    public static void End(SqliteConnection connection, long jobId, DateOnly on, BedEnd how) =>
        connection.Execute(EndSql, new { jobId, on, how = how.ToString() });

    private const string EndSql = """
        UPDATE job SET ended_on = @on, ended_how = @how, version = version + 1
        WHERE id = @jobId AND strung_on IS NOT NULL AND ended_on IS NULL
        """;

    /// <summary>Strings that others have followed and whose end nobody noted ended, at the latest, when those went in.</summary>
    public static void EndFollowed(SqliteConnection connection, long racketId, BedEnd how) =>
        Follow(connection, EndFollowedSql, new { racketId, how = how.ToString() });

    private const string EndFollowedSql = """
        UPDATE job SET ended_on = followed.next_on, ended_how = @how, version = version + 1
        FROM (SELECT id, LEAD(strung_on) OVER (ORDER BY strung_on, id) AS next_on
              FROM job
              WHERE racket_id = @racketId AND strung_on IS NOT NULL) followed
        WHERE job.id = followed.id AND job.ended_on IS NULL AND followed.next_on IS NOT NULL
        RETURNING id
        """;

    /// <summary>
    /// A job of other days comes to stand among the racket's: strings that ended only because later ones followed them end with
    /// it instead.
    /// </summary>
    public static void EndBefore(SqliteConnection connection, long racketId, long jobId, DateOnly strungOn) =>
        Follow(connection, EndBeforeSql, new { racketId, jobId, strungOn });

    private const string EndBeforeSql = """
        UPDATE job SET ended_on = @strungOn, version = version + 1
        WHERE racket_id = @racketId AND id <> @jobId AND strung_on <= @strungOn AND ended_on > @strungOn AND ended_how IN ('CutOut', 'Unknown')
        RETURNING id
        """;

    /// <summary>
    /// A job is about to leave the racket: strings that ended because it followed them end with the next ones, or are in again;
    /// its own that ended because others followed have not ended.
    /// </summary>
    public static void Leave(SqliteConnection connection, long racketId, long jobId, DateOnly strungOn)
    {
        Follow(connection, LeaveSql, new { racketId, jobId, strungOn });
        connection.Execute(NotEndedSql, new { racketId, jobId });
    }

    private const string LeaveSql = """
        UPDATE job
        SET ended_on = followed.next_on, ended_how = CASE WHEN followed.next_on IS NOT NULL THEN ended_how END, version = version + 1
        FROM (SELECT id, LEAD(strung_on) OVER (ORDER BY strung_on, id) AS next_on
              FROM job
              WHERE racket_id = @racketId AND strung_on IS NOT NULL AND id <> @jobId) followed
        WHERE job.id = followed.id AND job.strung_on <= @strungOn AND job.ended_on = @strungOn AND job.ended_how IN ('CutOut', 'Unknown')
        RETURNING id
        """;

    private const string NotEndedSql = """
        UPDATE job SET ended_on = NULL, ended_how = NULL
        WHERE id = @jobId AND ended_how IN ('CutOut', 'Unknown')
          AND EXISTS (SELECT 1 FROM job n WHERE n.racket_id = @racketId AND n.id <> @jobId AND n.strung_on = job.ended_on)
        """;

    /// <summary>Takes back that the strings before were cut out for a stringing on that day.</summary>
    public static void Reopen(SqliteConnection connection, long racketId, DateOnly strungOn) =>
        Follow(connection, ReopenSql, new { racketId, strungOn });

    private const string ReopenSql = """
        UPDATE job SET ended_on = NULL, ended_how = NULL, version = version + 1
        WHERE id = (SELECT job_id FROM bed WHERE racket_id = @racketId) AND ended_on = @strungOn AND ended_how = 'CutOut'
        RETURNING id
        """;

    /// <summary>What follows for strings from another ticket is nobody’s change of theirs: a list that brought them can be taken back as before.</summary>
    private static void Follow(SqliteConnection connection, string sql, object values)
    {
        foreach (var id in connection.Query<long>(sql, values).AsList())
            connection.Execute(UnchangedSql, new { id });
    }

    private const string UnchangedSql = "UPDATE stringing_list_record SET version = version + 1 WHERE kind = 'job' AND record_id = @id";
}
