using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Jobs;

/// <summary>A ticket that a client asks for, in a reminder's answer or in the own own page.</summary>
internal static class RequestedJob
{
    /// <summary>
    /// The same again, as the last order of this racket was; it waits for the racket to be brought. Null where there was
    /// none. In the caller's transaction.
    /// </summary>
    public static long? Make(SqliteConnection connection, long racketId, DateOnly today, string wish) =>
        connection.ExecuteScalar<long?>(MakeSql, new { racketId, today, wish });

    private const string MakeSql = $"""
        INSERT INTO job (ticket, racket_id, state, mains_id, crosses_id, mains_supplied_by, crosses_supplied_by,
                         mains_tension, crosses_tension, tension_unit, pre_stretch_percent, pieces, received_on, price_minor,
                         wish, expected)
        SELECT {NextTicket}, racket_id, 'Waiting', mains_id, crosses_id, mains_supplied_by,
               crosses_supplied_by, mains_tension, crosses_tension, tension_unit, pre_stretch_percent, pieces, @today,
               price_minor, @wish, 1
        FROM job
        WHERE racket_id = @racketId AND state <> 'Cancelled'
        ORDER BY COALESCE(strung_on, received_on) DESC, id DESC
        LIMIT 1
        RETURNING id
        """;

    /// <summary>SQL: the next ticket's number. Those of clients who were forgotten are not given out again.</summary>
    internal const string NextTicket = "(SELECT MAX((SELECT COALESCE(MAX(ticket), 0) FROM job), (SELECT COALESCE(MAX(ticket), 0) FROM past_job)) + 1)";
}
