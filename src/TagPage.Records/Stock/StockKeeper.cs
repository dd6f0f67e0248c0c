using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Stock;

/// <summary>
/// Takes what jobs use from the stock. Triggers mark the jobs that were strung, taken back or changed; before the transaction
/// ends what each should have taken is compared with what it has, and the difference is written down. No job is ever held up.
/// </summary>
public sealed class StockKeeper(Database database, TimeProvider clock)
{
    /// <summary>From here on every write keeps the stock.</summary>
    public void Attach() => database.BeforeCommit += Take;

    private void Take(SqliteConnection connection)
    {
        if (connection.ExecuteScalar<bool>("SELECT EXISTS (SELECT 1 FROM stock_again)"))
            connection.Execute(TakeSql, new { Now = clock.GetUtcNow(), MadeBy = Who.Program.Name });
    }

    // A length on the price’s lines is the racket’s own; without one it is the usual length, half of it for mains and for crosses.
    private const string TakeSql = """
        WITH length AS (
          SELECT a.job_id,
                 (SELECT SUM(h.centimetres) FROM charge h WHERE h.job_id = a.job_id AND h.kind = 'Strings') AS whole,
                 (SELECT SUM(h.centimetres) FROM charge h WHERE h.job_id = a.job_id AND h.kind = 'Mains') AS mains,
                 (SELECT SUM(h.centimetres) FROM charge h WHERE h.job_id = a.job_id AND h.kind = 'Crosses') AS crosses
          FROM stock_again a),
        side AS (
          SELECT j.id AS job_id, s.string_id, COALESCE(l.mains, l.whole - l.whole / 2, s.racket_cm - s.racket_cm / 2) AS centimetres
          FROM length l JOIN job j ON j.id = l.job_id JOIN string_stock s ON s.string_id = j.mains_id
          WHERE j.strung_on >= s.since AND j.mains_supplied_by = 'Shop'
          UNION ALL
          SELECT j.id, s.string_id, COALESCE(l.crosses, l.whole / 2, s.racket_cm / 2)
          FROM length l JOIN job j ON j.id = l.job_id JOIN string_stock s ON s.string_id = j.crosses_id
          WHERE j.strung_on >= s.since AND j.crosses_supplied_by = 'Shop'),
        change AS (
          SELECT job_id, string_id, -centimetres AS centimetres FROM side
          UNION ALL
          SELECT m.job_id, m.string_id, -m.centimetres FROM stock_again a JOIN stock_move m ON m.job_id = a.job_id)
        INSERT INTO stock_move (string_id, kind, centimetres, job_id, made_at, made_by)
        SELECT string_id, 'Used', SUM(centimetres), job_id, @Now, @MadeBy
        FROM change
        GROUP BY job_id, string_id
        HAVING SUM(centimetres) <> 0;
        DELETE FROM stock_again;
        """;
}
