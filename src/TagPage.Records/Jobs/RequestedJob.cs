using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Money;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>A ticket that a client asks for. In the caller's transaction.</summary>
internal static class RequestedJob
{
    /// <summary>
    /// The same again, as the last order of this racket was; it waits for the racket to be brought. Null where there was none.
    /// </summary>
    public static long? Make(SqliteConnection connection, long racketId, (DateTimeOffset Now, DateOnly Today) at, JobRequest request)
    {
        if (connection.ExecuteScalar<long?>(LastSql, new { racketId }) is not { } last)
            return null;
        var job = connection.ExecuteScalar<long>(MakeSql, new { last, at.Today });
        ChargeLineStore.Copy(connection, last, job, Who.Program, at.Now);
        JobStopStore.Set(connection, job, request.StopId, request.StopId);
        connection.Execute(AskSql, new
        {
            job,
            AskedIn = request.AskedIn.ToString(),
            request.AskedWords,
            request.DropOffWhere,
            request.DropOffBy,
            request.NeededBy,
        });
        return job;
    }

    private const string LastSql = $"SELECT {Last} FROM racket r WHERE r.id = @racketId";

    /// <summary>SQL: of the jobs of <c>racket r</c>, the one that "the same again" means.</summary>
    internal const string Last = "(SELECT id FROM job WHERE racket_id = r.id AND state <> 'Cancelled' AND mains_id IS NOT NULL ORDER BY COALESCE(strung_on, received_on) DESC, id DESC LIMIT 1)";

    private const string MakeSql = $"""
        INSERT INTO job (ticket, racket_id, state, mains_id, crosses_id, mains_supplied_by, crosses_supplied_by,
                         mains_tension, crosses_tension, tension_unit, mains_pre_stretch, crosses_pre_stretch, pieces, received_on)
        SELECT {NextTicket}, racket_id, 'Waiting', mains_id, crosses_id, mains_supplied_by,
               crosses_supplied_by, mains_tension, crosses_tension, tension_unit, mains_pre_stretch, crosses_pre_stretch, pieces, @Today
        FROM job
        WHERE id = @last
        RETURNING id
        """;

    /// <summary>SQL: the next ticket's number. Those of clients whose data was deleted, and of deleted tickets, are not given out again.</summary>
    internal const string NextTicket = """
        (SELECT MAX((SELECT COALESCE(MAX(ticket), 0) FROM job), (SELECT COALESCE(MAX(ticket), 0) FROM past_job),
                    (SELECT COALESCE(MAX(ticket), 0) FROM deleted_ticket)) + 1)
        """;

    private const string AskSql = """
        INSERT INTO job_request (job_id, asked_in, asked_words, drop_off_where, drop_off_by, needed_by)
        VALUES (@job, @AskedIn, @AskedWords, @DropOffWhere, @DropOffBy, @NeededBy)
        """;

    /// <summary>A ticket that was cancelled is asked for once more, as on its first day. False for any other.</summary>
    public static bool AskAgain(SqliteConnection connection, long job, DateOnly today, string words) =>
        connection.Execute(WaitAgainSql, new { job, today }) == 1 && connection.Execute(AskAgainSql, new { job, words }) == 1;

    private const string WaitAgainSql = """
        UPDATE job SET state = 'Waiting', received_on = @today, promised_for = NULL, version = version + 1 WHERE id = @job AND state = 'Cancelled'
        """;

    private const string AskAgainSql = "UPDATE job_request SET asked_words = @words, expected = 1 WHERE job_id = @job";

    /// <summary>Changes the words; whoever has the job's form open is told that something changed.</summary>
    public static void Reword(SqliteConnection connection, long job, string words) => connection.Execute(RewordSql, new { job, words });

    private const string RewordSql = """
        UPDATE job_request SET asked_words = @words WHERE job_id = @job;
        UPDATE job SET version = version + 1 WHERE id = @job;
        """;
}
