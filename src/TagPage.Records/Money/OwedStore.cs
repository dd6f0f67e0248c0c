using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.Money;

/// <summary>Who owes what, and what is to be done about it. The shop alone sees it.</summary>
public sealed class OwedStore(Database database)
{
    /// <summary>Lines of a list.</summary>
    public const int Most = 500;

    /// <summary>Somebody who owes something, or has something in credit.</summary>
    public sealed record Row
    {
        public long? ClientId { get; init; }
        public long? PayerId { get; init; }
        public string Name { get; init; } = "";
        public int Jobs { get; init; }
        public long OwedMinor { get; init; }

        /// <summary>Since the oldest of it was strung, or came in; null where nothing is owed.</summary>
        public DateOnly? Since { get; init; }
        public long CreditMinor { get; init; }
    }

    /// <summary>Most owed first. Jobs without a price owe nothing that can be added up.</summary>
    public IReadOnlyList<Row> List(Who who) => database.Read(c => c.Query<Row>(ListSql, new { who.IsOwner, Most }).AsList());

    private const string ListSql = """
        WITH open AS (
          SELECT CASE WHEN c.payer_id IS NULL THEN c.id END AS client_id, c.payer_id,
                 j.price_minor - (SELECT COALESCE(SUM(s.amount_minor), 0) FROM payment_share s WHERE s.job_id = j.id) AS minor,
                 COALESCE(j.strung_on, j.done_on, j.received_on) AS day
          FROM job j
          JOIN racket r ON r.id = j.racket_id
          JOIN player p ON p.id = r.player_id
          JOIN client c ON c.id = p.client_id
          WHERE j.paid_on IS NULL AND j.state <> 'Cancelled' AND j.price_minor > 0
        ),
        free AS (
          SELECT p.client_id, p.payer_id, p.amount_minor - (SELECT COALESCE(SUM(s.amount_minor), 0) FROM payment_share s WHERE s.payment_id = p.id) AS minor
          FROM payment p
          WHERE p.undoes_id IS NULL AND NOT EXISTS (SELECT 1 FROM prepaid b WHERE b.payment_id = p.id) AND (p.client_id IS NOT NULL OR p.payer_id IS NOT NULL) AND NOT EXISTS (SELECT 1 FROM payment u WHERE u.undoes_id = p.id)
        ),
        both AS (
          SELECT client_id, payer_id, COUNT(*) AS jobs, SUM(minor) AS owed_minor, MIN(day) AS since, 0 AS credit_minor FROM open GROUP BY client_id, payer_id
          UNION ALL
          SELECT client_id, payer_id, 0, 0, NULL, SUM(minor) FROM free WHERE minor > 0 GROUP BY client_id, payer_id
        )
        SELECT b.client_id, b.payer_id, COALESCE(y.name, c.name) AS name, SUM(b.jobs) AS jobs, SUM(b.owed_minor) AS owed_minor, MIN(b.since) AS since,
               SUM(b.credit_minor) AS credit_minor
        FROM both b
        LEFT JOIN client c ON c.id = b.client_id
        LEFT JOIN payer y ON y.id = b.payer_id
        WHERE @IsOwner
        GROUP BY b.client_id, b.payer_id
        ORDER BY owed_minor DESC, name
        LIMIT @Most
        """;

    /// <summary>What a client has to pay for rackets that are strung; null where that is nothing, and where somebody else pays.</summary>
    public Mine? OfClient(Who who) => database.Read(c => c.QuerySingle<Mine>(MineSql, new { who.ClientId }) is { OwedMinor: > 0 } mine ? mine : null);

    public sealed record Mine
    {
        public long OwedMinor { get; init; }

        /// <summary>Numbers, with commas.</summary>
        public string Tickets { get; init; } = "";
    }

    private const string MineSql = """
        SELECT COALESCE(SUM(minor), 0) AS owed_minor, COALESCE(group_concat(ticket, ', '), '') AS tickets
        FROM (SELECT j.ticket, j.price_minor - (SELECT COALESCE(SUM(s.amount_minor), 0) FROM payment_share s WHERE s.job_id = j.id) AS minor
              FROM client c
              JOIN player p ON p.client_id = c.id
              JOIN racket r ON r.player_id = p.id
              JOIN job j ON j.racket_id = r.id
              WHERE c.id = @ClientId AND c.payer_id IS NULL AND j.state IN ('Strung', 'Collected') AND j.paid_on IS NULL AND j.price_minor > 0
              ORDER BY j.ticket)
        """;

    /// <summary>A party's own account.</summary>
    public sealed record Account
    {
        public string Name { get; init; } = "";
        public string? Mail { get; init; }

        /// <summary>ISO 639-1; null for somebody who pays for others.</summary>
        public string? Language { get; init; }
        public IReadOnlyList<Job> Jobs { get; init; } = [];
        public long CreditMinor { get; init; }

        public long OwedMinor => Jobs.Sum(job => job.OpenMinor ?? 0);
    }

    /// <summary>A job that is not paid for.</summary>
    public sealed record Job
    {
        public long Id { get; init; }
        public long Ticket { get; init; }
        public string Whose { get; init; } = "";
        public DateOnly Day { get; init; }
        public bool IsStrung { get; init; }
        public bool IsVisit { get; init; }

        /// <summary>Null without a price.</summary>
        public long? OpenMinor { get; init; }
    }

    public Account? Get(Who who, Party party) => database.Read(c =>
        c.QuerySingleOrDefault<Account>(GetSql, Values(who, party)) is not { } account ? null : account with
        {
            Jobs = c.Query<Job>(JobsSql, Values(who, party)).AsList(),
            CreditMinor = ShareStore.Free(c, party).Sum(f => f.Free),
        });

    private static object Values(Who who, Party party) => new { who.IsOwner, party.ClientId, party.PayerId, Most };

    private const string GetSql = """
        SELECT name, mail, language FROM client WHERE id = @ClientId AND @IsOwner
        UNION ALL
        SELECT name, mail, NULL FROM payer WHERE id = @PayerId AND @IsOwner
        """;

    private const string JobsSql = """
        SELECT j.id, j.ticket, p.name || ', racket ' || r.number AS whose, COALESCE(j.strung_on, j.done_on, j.received_on) AS day, j.strung_on IS NOT NULL AS is_strung, j.done_on IS NOT NULL AS is_visit,
               j.price_minor - (SELECT COALESCE(SUM(s.amount_minor), 0) FROM payment_share s WHERE s.job_id = j.id) AS open_minor
        FROM client c
        JOIN player p ON p.client_id = c.id
        JOIN racket r ON r.player_id = p.id
        JOIN job j ON j.racket_id = r.id
        WHERE ((c.id = @ClientId AND c.payer_id IS NULL) OR c.payer_id = @PayerId) AND @IsOwner AND j.paid_on IS NULL AND j.state <> 'Cancelled'
        ORDER BY day, j.id
        LIMIT @Most
        """;
}
