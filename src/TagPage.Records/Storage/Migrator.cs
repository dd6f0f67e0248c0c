using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Storage;

/// <summary>Brings the schema up to date: the known migrations in name order, each in one transaction, each recorded.</summary>
public sealed class Migrator(Database database, DataFolder folder, TimeProvider clock, IReadOnlyList<Migration> known, ILogger<Migrator> log)
{
    /// <summary>True if the database has all the steps this program knows, and no others.</summary>
    public bool IsCurrent => Applied().SequenceEqual(known.Select(m => m.Name));

    /// <exception cref="CannotStartException">The database was made by a newer program.</exception>
    public void Run()
    {
        var done = Applied();
        RefuseNewer(done, known);
        var missing = known.Where(m => !done.Contains(m.Name)).ToList();
        if (missing.Count == 0)
            return;
        if (done.Count > 0)
            Copy(missing[0]);
        foreach (var migration in missing)
            Apply(migration);
        if (done.Count > 0)
            log.LogInformation("Brought the database up to date: {Names}.", string.Join(", ", missing.Select(m => m.Name)));
    }

    internal static void RefuseNewer(IEnumerable<string> done, IReadOnlyList<Migration> known)
    {
        if (done.Except(known.Select(m => m.Name)).Any())
            throw new CannotStartException("This database was made by a newer TagPage; start that version, or go back to a copy made by this one.");
    }

    private List<string> Applied() => database.Read(Applied);

    internal static List<string> Applied(SqliteConnection connection) =>
        connection.ExecuteScalar<long>(HasTableSql) == 0 ? [] : connection.Query<string>(AppliedSql).ToList();

    private const string HasTableSql = "SELECT COUNT(*) FROM sqlite_schema WHERE type = 'table' AND name = 'migration'";

    private const string AppliedSql = "SELECT name FROM migration ORDER BY name";

    private void Copy(Migration before)
    {
        var file = Path.Combine(folder.Copies, CopySweeper.NameFor(clock.GetUtcNow(), "before-" + Path.GetFileNameWithoutExtension(before.Name)));
        database.CopyTo(file);
        log.LogInformation("Copied the database to {File} before migrating.", file);
    }

    private void Apply(Migration migration) => database.Write(c =>
    {
        c.Execute(CreateTableSql);
        c.Execute(migration.Sql);
        c.Execute(RecordSql, new { migration.Name, At = clock.GetUtcNow() });
    });

    private const string CreateTableSql = """
        CREATE TABLE IF NOT EXISTS migration (name TEXT PRIMARY KEY, applied_at TEXT NOT NULL) STRICT, WITHOUT ROWID
        """;

    private const string RecordSql = "INSERT INTO migration (name, applied_at) VALUES (@Name, @At)";
}
