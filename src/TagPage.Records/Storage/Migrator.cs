using Dapper;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace TagPage.Records.Storage;

/// <summary>Brings the schema up to date: the known migrations in name order, each in one transaction, each recorded.</summary>
public sealed class Migrator(Database database, DataFolder folder, TimeProvider clock, IReadOnlyList<Migration> known, ILogger<Migrator> log)
{
    /// <summary>True if the database has all the steps this program knows, and no others.</summary>
    public bool IsCurrent => database.Read(StepsOf).SequenceEqual(known.Select(m => new Step(m.Name, m.Sum)));

    /// <exception cref="CannotStartException">The database was made by a newer program or by one with other tables, or a migration failed.</exception>
    public void Run()
    {
        var done = database.Read(c =>
        {
            RefuseOthers(c, folder, known);
            return StepsOf(c).ConvertAll(s => s.Name);
        });
        var missing = known.Where(m => !done.Contains(m.Name)).ToList();
        if (missing.Count == 0)
            return;
        if (done.Count > 0)
            BackUp(missing[0]);
        foreach (var migration in missing)
            Apply(migration);
        if (done.Count > 0)
            log.LogInformation("Brought the database up to date: {Names}.", string.Join(", ", missing.Select(m => m.Name)));
    }

    /// <summary>What a database says was done to it: the name of a migration and the sum of its text.</summary>
    internal sealed record Step(string Name, string Sum);

    internal static void RefuseOthers(SqliteConnection connection, DataFolder folder, IReadOnlyList<Migration> known)
    {
        if (!OtherTables.KeepsSums(connection))
        {
            if (OtherTables.HasAny(connection))
                throw OtherTables.Refusal(connection, folder);
            return;
        }
        if (IsNewer(connection, known))
            throw new CannotStartException("This database was made by a newer TagPage; start that version, or go back to a backup made by this one.");
        if (HasOtherTables(connection, known))
            throw OtherTables.Refusal(connection, folder);
    }

    /// <summary>It has steps that this program does not know.</summary>
    internal static bool IsNewer(SqliteConnection connection, IReadOnlyList<Migration> known) =>
        StepsOf(connection).ExceptBy(known.Select(m => m.Name), s => s.Name).Any();

    /// <summary>Nobody noted how its tables were made, or another text made them.</summary>
    internal static bool HasOtherTables(SqliteConnection connection, IReadOnlyList<Migration> known) =>
        StepsOf(connection) is var done && (done.Count == 0 || done.Exists(s => known.All(m => m.Sum != s.Sum)));

    /// <summary>What was done to a database, in order.</summary>
    internal static List<Step> StepsOf(SqliteConnection connection) =>
        OtherTables.KeepsSums(connection) ? connection.Query<(string Name, string Sum)>(AppliedSql).Select(s => new Step(s.Name, s.Sum)).ToList() : [];

    private const string AppliedSql = "SELECT name, sum FROM migration ORDER BY name";

    private void BackUp(Migration before)
    {
        var backup = new BackupMaker(database, folder, clock).Make(BackupFile.BeforeVersion + Path.GetFileNameWithoutExtension(before.Name));
        // A start that fails again and again makes one each time.
        new BackupFolder(folder.Backups).Tidy(BackupPlan.EveryDay, clock.GetUtcNow());
        log.LogInformation("Copied the database to {File} before migrating.", backup.Path);
    }

    private void Apply(Migration migration)
    {
        try
        {
            database.Write(c =>
            {
                c.Execute(CreateTableSql);
                RunAll(c, migration.Sql);
                c.Execute(RecordSql, new { migration.Name, At = clock.GetUtcNow(), migration.Sum });
            });
        }
        catch (SqliteException e) when (DatabaseFault.IsOfTheStatement(e))
        {
            throw new CannotStartException($"This version could not change the records as it needs to ({migration.Name}: {DatabaseFault.Reason(e)}). "
                + "Nothing was changed; start the version you had before.");
        }
    }

    /// <summary>By SQLite itself: after a statement that gives rows, as some ALTER TABLE do, the library keeps to itself what fails.</summary>
    private static void RunAll(SqliteConnection connection, string sql) =>
        SqliteException.ThrowExceptionForRC(raw.sqlite3_exec(connection.Handle, sql), connection.Handle);

    /// <summary>All that steps make, in an empty database.</summary>
    internal static void MakeTables(SqliteConnection connection, IEnumerable<Migration> steps)
    {
        connection.Execute(CreateTableSql);
        foreach (var step in steps)
            RunAll(connection, step.Sql);
    }

    private const string CreateTableSql = """
        CREATE TABLE IF NOT EXISTS migration (name TEXT PRIMARY KEY, applied_at TEXT NOT NULL, sum TEXT NOT NULL DEFAULT '') STRICT, WITHOUT ROWID
        """;

    private const string RecordSql = "INSERT INTO migration (name, applied_at, sum) VALUES (@Name, @At, @Sum)";
}
