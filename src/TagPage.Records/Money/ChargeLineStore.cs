using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Money;
using TagPage.Records.Storage;

namespace TagPage.Records.Money;

/// <summary>The lines of a job's price and the record of their changes. Runs in the caller's transaction.</summary>
internal static class ChargeLineStore
{
    internal static List<ChargeLine> Of(SqliteConnection connection, long job) => connection.Query<ChargeLine>(OfSql, new { job }).AsList();

    private const string OfSql = """
        SELECT kind, words, centimetres, metre_minor, amount_minor, tax_bp FROM charge WHERE job_id = @job ORDER BY id
        """;

    /// <summary>Other lines instead of those that are there; what was paid beyond the new price becomes credit.</summary>
    internal static void Replace(SqliteConnection connection, long job, IReadOnlyList<ChargeLine> lines, Who who, DateTimeOffset now)
    {
        var before = Of(connection, job);
        if (before.SequenceEqual(lines))
            return;
        connection.Execute("DELETE FROM charge WHERE job_id = @job", new { job });
        Add(connection, job, lines);
        Note(connection, job, before, lines, who, now);
        ShareStore.Settle(connection, job, who, now);
    }

    private static void Add(SqliteConnection connection, long job, IEnumerable<ChargeLine> lines) =>
        connection.Execute(AddSql, lines.Select(line => new
        {
            job,
            line.KindName,
            line.Words,
            line.Centimetres,
            line.MetreMinor,
            line.AmountMinor,
            line.TaxBp,
        }));

    private const string AddSql = """
        INSERT INTO charge (job_id, kind, words, centimetres, metre_minor, amount_minor, tax_bp)
        VALUES (@job, @KindName, @Words, @Centimetres, @MetreMinor, @AmountMinor, @TaxBp)
        """;

    /// <summary>The price of another job of the racket, for the same again.</summary>
    internal static void Copy(SqliteConnection connection, long from, long to, Who who, DateTimeOffset now) =>
        Replace(connection, to, [.. Of(connection, from).Where(line => line.Kind != ChargeKind.Prepaid)], who, now);

    /// <summary>Lines are compared by what they are for; of two for the same the first with the first.</summary>
    private static void Note(SqliteConnection connection, long job, List<ChargeLine> before, IReadOnlyList<ChargeLine> after, Who who, DateTimeOffset now)
    {
        var (old, made) = (before.ToLookup(Key), after.ToLookup(Key));
        foreach (var key in before.Concat(after).Select(Key).Distinct())
        {
            var (was, is_) = (old[key].ToList(), made[key].ToList());
            for (var i = 0; i < Math.Max(was.Count, is_.Count); i++)
                Note(connection, job, key.KindName, was.ElementAtOrDefault(i)?.AmountMinor, is_.ElementAtOrDefault(i)?.AmountMinor, who, now);
        }
    }

    private static (string KindName, string Words) Key(ChargeLine line) => (line.KindName, line.Words);

    private static void Note(SqliteConnection connection, long job, string kind, long? was, long? made, Who who, DateTimeOffset now)
    {
        if (was != made)
            connection.Execute(NoteSql, new { job, kind, was, made, now, who.Name });
    }

    private const string NoteSql = """
        INSERT INTO charge_change (job_id, ticket, kind, was_minor, is_minor, made_at, made_by)
        SELECT id, ticket, @kind, @was, @made, @now, @Name FROM job WHERE id = @job
        """;
}
