using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Money;

namespace TagPage.Records.Money;

/// <summary>
/// Jobs that were brought in from elsewhere with a price and a day of payment: the price becomes one line, and what was paid a
/// payment. Runs in the caller's transaction.
/// </summary>
internal static class BroughtMoneyStore
{
    public static void Add(SqliteConnection connection, IEnumerable<(long Id, PaymentMethod Method)> jobs, DateTimeOffset now) => connection.Execute(AddSql, new
    {
        jobs = JsonSerializer.Serialize(jobs.ToDictionary(job => job.Id, job => job.Method.ToString())),
        now,
        By = "Import",
        before = connection.ExecuteScalar<long>("SELECT COALESCE(MAX(id), 0) FROM payment"),
    });

    private const string AddSql = """
        INSERT INTO charge (job_id, kind, amount_minor, tax_bp)
        SELECT id, 'Whole', price_minor, COALESCE((SELECT tax_bp FROM money_setting), 0)
        FROM job
        WHERE id IN (SELECT CAST(key AS INTEGER) FROM json_each(@jobs)) AND price_minor IS NOT NULL;

        INSERT INTO charge_change (job_id, ticket, kind, is_minor, made_at, made_by)
        SELECT id, ticket, 'Whole', price_minor, @now, @By
        FROM job
        WHERE id IN (SELECT CAST(key AS INTEGER) FROM json_each(@jobs)) AND price_minor IS NOT NULL;

        INSERT INTO payment (id, client_id, payer_id, paid_on, method, amount_minor, made_at, made_by)
        SELECT @before + ROW_NUMBER() OVER (ORDER BY j.id), CASE WHEN c.payer_id IS NULL THEN c.id END, c.payer_id, j.paid_on, m.value,
               COALESCE(j.price_minor, 0), @now, @By
        FROM json_each(@jobs) m
        JOIN job j ON j.id = CAST(m.key AS INTEGER)
        JOIN racket r ON r.id = j.racket_id
        JOIN player p ON p.id = r.player_id
        JOIN client c ON c.id = p.client_id
        WHERE j.paid_on IS NOT NULL;

        INSERT INTO payment_share (payment_id, job_id, amount_minor, made_at, made_by)
        SELECT @before + ROW_NUMBER() OVER (ORDER BY id), id, COALESCE(price_minor, 0), @now, @By
        FROM job
        WHERE id IN (SELECT CAST(key AS INTEGER) FROM json_each(@jobs)) AND paid_on IS NOT NULL;
        """;
}
