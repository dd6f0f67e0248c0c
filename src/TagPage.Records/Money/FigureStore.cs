using Dapper;
using TagPage.Core.Money;
using TagPage.Records.Storage;

namespace TagPage.Records.Money;

/// <summary>A year in figures, with jobs of clients whose data was deleted. The shop alone sees it.</summary>
public sealed class FigureStore(Database database)
{
    /// <summary>Strings and clients that are listed.</summary>
    public const int Most = 30;

    public sealed record Month
    {
        /// <summary>1 to 12.</summary>
        public int Number { get; init; }

        /// <summary>Strung in it, and what that costs.</summary>
        public int Jobs { get; init; }

        /// <summary>Work without new strings, and what that costs is within what is charged.</summary>
        public int Visits { get; init; }
        public long ChargedMinor { get; init; }

        /// <summary>What came in, less what was taken back.</summary>
        public long IncomeMinor { get; init; }

        /// <summary>Days from coming in to being strung, on average; null where nothing was strung.</summary>
        public double? Days { get; init; }
    }

    /// <summary>All twelve months; empty for everybody but the shop.</summary>
    public IReadOnlyList<Month> Year(Who who, int year) => !who.IsOwner ? [] : database.Read(c => c.Query<Month>(YearSql, Values(who, year)).AsList());

    private static object Values(Who who, int year) => new { who.IsOwner, From = new DateOnly(year, 1, 1), To = new DateOnly(year, 12, 31), Most };

    private const string YearSql = """
        WITH RECURSIVE month (number) AS (SELECT 1 UNION ALL SELECT number + 1 FROM month WHERE number < 12),
        strung AS (
          SELECT strung_on, received_on, price_minor FROM job WHERE strung_on BETWEEN @From AND @To
          UNION ALL
          SELECT strung_on, received_on, price_minor FROM past_job WHERE strung_on BETWEEN @From AND @To
        ),
        done AS (
          SELECT done_on, price_minor FROM job WHERE done_on BETWEEN @From AND @To
          UNION ALL
          SELECT done_on, price_minor FROM past_job WHERE done_on BETWEEN @From AND @To
        ),
        visits AS (
          SELECT CAST(substr(done_on, 6, 2) AS INTEGER) AS number, COUNT(*) AS visits, SUM(COALESCE(price_minor, 0)) AS charged_minor FROM done GROUP BY 1
        ),
        jobs AS (
          SELECT CAST(substr(strung_on, 6, 2) AS INTEGER) AS number, COUNT(*) AS jobs, SUM(COALESCE(price_minor, 0)) AS charged_minor,
                 AVG(julianday(strung_on) - julianday(received_on)) AS days
          FROM strung
          GROUP BY 1
        ),
        ahead AS (
          SELECT CAST(substr(p.paid_on, 6, 2) AS INTEGER) AS number, SUM(p.amount_minor) AS charged_minor
          FROM payment p
          JOIN prepaid b ON b.payment_id IN (p.id, p.undoes_id)
          WHERE p.paid_on BETWEEN @From AND @To
          GROUP BY 1
        ),
        income AS (
          SELECT CAST(substr(paid_on, 6, 2) AS INTEGER) AS number, SUM(amount_minor) AS income_minor FROM payment WHERE paid_on BETWEEN @From AND @To GROUP BY 1
        )
        SELECT m.number, COALESCE(j.jobs, 0) AS jobs, COALESCE(v.visits, 0) AS visits, COALESCE(j.charged_minor, 0) + COALESCE(v.charged_minor, 0) + COALESCE(a.charged_minor, 0) AS charged_minor, COALESCE(i.income_minor, 0) AS income_minor, j.days
        FROM month m
        LEFT JOIN jobs j ON j.number = m.number
        LEFT JOIN visits v ON v.number = m.number
        LEFT JOIN ahead a ON a.number = m.number
        LEFT JOIN income i ON i.number = m.number
        WHERE @IsOwner
        ORDER BY m.number
        """;

    public sealed record StringUse
    {
        public string Name { get; init; } = "";
        public decimal GaugeMm { get; init; }

        /// <summary>Rackets' worth: mains or crosses alone are half of one.</summary>
        public double Sets { get; init; }
    }

    /// <summary>Strings of the shop that went in, the most used first.</summary>
    public IReadOnlyList<StringUse> Strings(Who who, int year) => database.Read(c => c.Query<StringUse>(StringsSql, Values(who, year)).AsList());

    private const string StringsSql = """
        SELECT s.name, s.gauge_mm, COUNT(*) / 2.0 AS sets
        FROM (SELECT mains_id AS id FROM job WHERE strung_on BETWEEN @From AND @To AND mains_supplied_by = 'Shop'
              UNION ALL
              SELECT crosses_id FROM job WHERE strung_on BETWEEN @From AND @To AND crosses_supplied_by = 'Shop') used
        JOIN string_kind s ON s.id = used.id
        WHERE @IsOwner
        GROUP BY s.id
        ORDER BY sets DESC, s.name
        LIMIT @Most
        """;

    public sealed record Away
    {
        public long Id { get; init; }
        public string Name { get; init; } = "";
        public DateOnly SeenOn { get; init; }
    }

    /// <summary>Clients who were here and then not any more, those last seen first.</summary>
    /// <param name="who">Only the shop may.</param>
    /// <param name="since">Not seen since this day.</param>
    public IReadOnlyList<Away> StayAway(Who who, DateOnly since) => database.Read(c => c.Query<Away>(AwaySql, new { who.IsOwner, since, Most }).AsList());

    private const string AwaySql = """
        SELECT id, name, seen_on FROM client WHERE seen_on <> '' AND seen_on < @since AND @IsOwner ORDER BY seen_on DESC, id LIMIT @Most
        """;

    /// <summary>A payment, for the accountant.</summary>
    public sealed record Paid
    {
        public long Id { get; init; }
        public DateOnly PaidOn { get; init; }
        public string FromName { get; init; } = "";
        public PaymentMethod Method { get; init; }
        public long AmountMinor { get; init; }
        public long? UndoesId { get; init; }

        /// <summary>Numbers, with blanks.</summary>
        public string Tickets { get; init; } = "";
        public string Note { get; init; } = "";
    }

    public IReadOnlyList<Paid> Payments(Who who, int year) => database.Read(c => c.Query<Paid>(PaymentsSql, Values(who, year)).AsList());

    private const string PaymentsSql = """
        SELECT p.id, p.paid_on, COALESCE(y.name, c.name, '') AS from_name, p.method, p.amount_minor, p.undoes_id, p.note,
               COALESCE((SELECT group_concat(t, ' ') FROM (SELECT DISTINCT COALESCE(j.ticket, s.past_ticket) AS t
                         FROM payment_share s LEFT JOIN job j ON j.id = s.job_id WHERE s.payment_id = p.id ORDER BY t)), '') AS tickets
        FROM payment p
        LEFT JOIN client c ON c.id = p.client_id
        LEFT JOIN payer y ON y.id = p.payer_id
        WHERE p.paid_on BETWEEN @From AND @To AND @IsOwner
        ORDER BY p.paid_on, p.id
        """;

    /// <summary>What was charged at one tax rate for one ticket, for the accountant.</summary>
    public sealed record Charged
    {
        /// <summary>Of a visit, the day its work was done.</summary>
        public DateOnly StrungOn { get; init; }
        /// <summary>Null for restrings that were paid in advance, on the day they were sold.</summary>
        public long? Ticket { get; init; }
        public int TaxBp { get; init; }
        public long GrossMinor { get; init; }
    }

    public IReadOnlyList<Charged> Charges(Who who, int year) => database.Read(c => c.Query<Charged>(ChargesSql, Values(who, year)).AsList());

    private const string ChargesSql = """
        SELECT n.day AS strung_on, n.ticket, h.tax_bp, SUM(h.amount_minor) AS gross_minor
        FROM (SELECT id, ticket, strung_on AS day FROM job WHERE strung_on BETWEEN @From AND @To
              UNION ALL
              SELECT id, ticket, done_on FROM job WHERE done_on BETWEEN @From AND @To) n
        JOIN charge h ON h.job_id = n.id
        WHERE @IsOwner
        GROUP BY n.id, h.tax_bp
        UNION ALL
        SELECT p.paid_on, NULL, b.tax_bp, p.amount_minor
        FROM payment p
        JOIN prepaid b ON b.payment_id IN (p.id, p.undoes_id)
        WHERE p.paid_on BETWEEN @From AND @To AND @IsOwner
        ORDER BY 1, 2, 3
        """;
}
