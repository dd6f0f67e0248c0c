using System.Reflection;
using Dapper;
using TagPage.Web.Hosting;

namespace TagPage.Web.Data;

/// <summary>Brings the schema up to date: embedded numbered .sql files in name order, each in one transaction, each recorded.</summary>
public sealed class Migrator(Database database, DataFolder folder, TimeProvider clock, ILogger<Migrator> log)
{
    private static readonly string Prefix = typeof(Migrator).Namespace + ".Migrations.";

    /// <summary>The names of all migrations this program knows, oldest first.</summary>
    public static IReadOnlyList<string> Known { get; } =
        [.. Assembly.GetExecutingAssembly().GetManifestResourceNames()
            .Where(n => n.StartsWith(Prefix, StringComparison.Ordinal))
            .Select(n => n[Prefix.Length..])
            .Order(StringComparer.Ordinal)];

    /// <exception cref="CannotStartException">The database was made by a newer program.</exception>
    public void Run()
    {
        var done = Applied(database);
        if (done.Except(Known).Any())
            throw new CannotStartException("This database was made by a newer TagPage. Start that version, or restore a copy made by this one.");
        var missing = Known.Except(done).ToList();
        if (missing.Count == 0)
            return;
        if (done.Count > 0)
            Copy(missing[0]);
        foreach (var name in missing)
            Apply(name);
        if (done.Count > 0)
            log.LogInformation("Brought the database up to date: {Names}.", string.Join(", ", missing));
    }

    public static IReadOnlyCollection<string> Applied(Database database) => database.Read(c =>
        c.ExecuteScalar<long>(HasTableSql) == 0 ? [] : c.Query<string>(AppliedSql).ToList());

    private const string HasTableSql = "SELECT COUNT(*) FROM sqlite_schema WHERE type = 'table' AND name = 'migration'";

    private const string AppliedSql = "SELECT name FROM migration ORDER BY name";

    private void Copy(string before)
    {
        var stamp = clock.GetUtcNow().ToString("yyyyMMdd-HHmmss", System.Globalization.CultureInfo.InvariantCulture);
        var file = Path.Combine(folder.Copies, $"{stamp}-before-{Path.GetFileNameWithoutExtension(before)}.db");
        database.CopyTo(file);
        log.LogInformation("Copied the database to {File} before migrating.", file);
    }

    private void Apply(string name)
    {
        database.Write(c =>
        {
            c.Execute(CreateTableSql);
            c.Execute(Text(name));
            c.Execute(RecordSql, new { Name = name, At = clock.GetUtcNow() });
        });
    }

    private const string CreateTableSql = """
        CREATE TABLE IF NOT EXISTS migration (name TEXT PRIMARY KEY, applied_at TEXT NOT NULL) STRICT, WITHOUT ROWID
        """;

    private const string RecordSql = "INSERT INTO migration (name, applied_at) VALUES (@Name, @At)";

    private static string Text(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Prefix + name)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
