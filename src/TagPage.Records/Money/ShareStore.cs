using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Money;

/// <summary>What of which payment is laid against which job, and what follows for the job. Runs in the caller's transaction.</summary>
internal static class ShareStore
{
    /// <summary>A job as far as money goes. Cancelled ones cost nothing.</summary>
    internal sealed record Account
    {
        public long Id { get; init; }
        public long Ticket { get; init; }
        public bool IsCancelled { get; init; }
        public long? PriceMinor { get; init; }
        public long LaidMinor { get; init; }
        public DateOnly? PaidOn { get; init; }
        public long ClientId { get; init; }
        public long? PayerId { get; init; }
        public string Currency { get; init; } = "";

        public long DueMinor => IsCancelled ? 0 : PriceMinor ?? 0;

        public long OpenMinor => DueMinor - LaidMinor;

        /// <summary>Whoever pays for it now.</summary>
        public Party Party => PayerId is { } payer ? Party.Payer(payer) : Party.Client(ClientId);
    }

    internal static Account? Of(SqliteConnection connection, long job) => connection.QuerySingleOrDefault<Account>(OfSql, new { job });

    private const string OfSql = """
        SELECT j.id, j.ticket, j.state = 'Cancelled' AS is_cancelled, j.paid_on, p.client_id, c.payer_id, COALESCE((SELECT currency FROM shop), 'GBP') AS currency,
               (SELECT SUM(amount_minor) FROM charge WHERE job_id = j.id) AS price_minor,
               (SELECT COALESCE(SUM(amount_minor), 0) FROM payment_share WHERE job_id = j.id) AS laid_minor
        FROM job j
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        JOIN client c ON c.id = p.client_id
        WHERE j.id = @job
        """;

    internal static void Lay(SqliteConnection connection, long payment, long job, long amount, Who who, DateTimeOffset now) =>
        connection.Execute(LaySql, new { payment, job, amount, now, who.Name });

    private const string LaySql = """
        INSERT INTO payment_share (payment_id, job_id, amount_minor, made_at, made_by) VALUES (@payment, @job, @amount, @now, @Name)
        """;

    /// <summary>
    /// After anything that touches a job's price or payments: takes off it what lies beyond its price, the newest payment
    /// first, and keeps price and day of payment with the job.
    /// </summary>
    internal static void Settle(SqliteConnection connection, long job, Who who, DateTimeOffset now)
    {
        var account = Of(connection, job)!;
        var beyond = account.LaidMinor - account.DueMinor;
        foreach (var (payment, laid) in beyond > 0 ? connection.Query<(long Payment, long Laid)>(LaidSql, new { job }).AsList() : [])
        {
            var off = Math.Min(beyond, laid);
            if (off > 0)
                Lay(connection, payment, job, -off, who, now);
            beyond -= off;
        }
        connection.Execute(SettleSql, new { job });
    }

    // What was taken back lies on the job twice, above and below zero: taken off once more, it would be lost.
    private const string LaidSql = """
        SELECT s.payment_id, SUM(s.amount_minor) AS laid
        FROM payment_share s
        WHERE s.job_id = @job AND NOT EXISTS (SELECT 1 FROM payment u WHERE u.undoes_id = s.payment_id)
        GROUP BY s.payment_id
        HAVING laid > 0
        ORDER BY s.payment_id DESC
        """;

    /// <summary>
    /// SQL: the day on which payments came to cover the job, null while they do not. Without a price, a payment without an amount does; a visit
    /// without a price cost nothing, and one that was paid in advance may cover all of a stringing.
    /// </summary>
    private const string CoveredOn = """
        CASE WHEN state <> 'Cancelled' AND (SELECT COALESCE(SUM(amount_minor), 0) FROM payment_share WHERE job_id = job.id)
                                            >= (SELECT COALESCE(SUM(amount_minor), 0) FROM charge WHERE job_id = job.id)
             THEN COALESCE((SELECT MAX(p.paid_on)
                   FROM payment_share s
                   JOIN payment p ON p.id = s.payment_id
                   WHERE s.job_id = job.id AND p.undoes_id IS NULL AND NOT EXISTS (SELECT 1 FROM payment u WHERE u.undoes_id = p.id)), done_on,
                           (SELECT u.used_on FROM prepaid_use u WHERE u.job_id = job.id AND u.given_back_at IS NULL)) END
        """;

    private const string SettleSql = $"""
        UPDATE job
        SET price_minor = n.price_minor, paid_on = n.paid_on, version = version + 1
        FROM (SELECT id, (SELECT SUM(amount_minor) FROM charge WHERE job_id = job.id) AS price_minor, {CoveredOn} AS paid_on FROM job WHERE id = @job) n
        WHERE job.id = n.id AND (job.price_minor IS NOT n.price_minor OR job.paid_on IS NOT n.paid_on)
        """;

    /// <summary>What of a party's payments is laid against nothing, the oldest first.</summary>
    internal static List<(long Payment, long Free)> Free(SqliteConnection connection, Party party) =>
        connection.Query<(long Payment, long Free)>(FreeSql, new { party.ClientId, party.PayerId }).AsList();

    private const string FreeSql = """
        SELECT p.id AS payment, p.amount_minor - (SELECT COALESCE(SUM(s.amount_minor), 0) FROM payment_share s WHERE s.payment_id = p.id) AS free
        FROM payment p
        WHERE (p.client_id = @ClientId OR p.payer_id = @PayerId) AND p.undoes_id IS NULL AND NOT EXISTS (SELECT 1 FROM prepaid b WHERE b.payment_id = p.id)
          AND NOT EXISTS (SELECT 1 FROM payment u WHERE u.undoes_id = p.id)
          AND p.amount_minor > (SELECT COALESCE(SUM(s.amount_minor), 0) FROM payment_share s WHERE s.payment_id = p.id)
        ORDER BY p.id
        """;

    /// <summary>Jobs that a party has still to pay for, the oldest first.</summary>
    internal static List<long> OpenJobs(SqliteConnection connection, Party party) => connection.Query<long>(OpenJobsSql, new { party.ClientId, party.PayerId }).AsList();

    private const string OpenJobsSql = """
        SELECT j.id
        FROM client c
        JOIN player p ON p.client_id = c.id
        JOIN racket r ON r.player_id = p.id
        JOIN job j ON j.racket_id = r.id
        WHERE ((c.id = @ClientId AND c.payer_id IS NULL) OR c.payer_id = @PayerId)
          AND j.paid_on IS NULL AND j.state <> 'Cancelled' AND j.price_minor IS NOT NULL
        ORDER BY COALESCE(j.strung_on, j.received_on), j.id
        """;
}
