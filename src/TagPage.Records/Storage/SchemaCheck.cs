using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Storage;

/// <summary>
/// Whether a database has the tables, indexes, triggers and views that its migrations make, by their text, and no others. A file from
/// elsewhere may lack one that a page needs, or bring a trigger that changes other records.
/// </summary>
internal static class SchemaCheck
{
    /// <summary>The first that is otherwise; null if there is none.</summary>
    public static string? Finding(SqliteConnection connection, IReadOnlyList<Migration> known)
    {
        var here = PartsOf(connection);
        var due = PartsOf(known.IntersectBy(Migrator.StepsOf(connection).Select(s => s.Name), m => m.Name));
        // Only a backup that carries keys has it.
        if (here.GetValueOrDefault("table carried_key") == CarriedKeys.TableSql)
            here.Remove("table carried_key");
        return due.Where(p => !here.ContainsKey(p.Key)).Select(p => p.Key + " is missing")
            .Concat(here.Where(p => !due.ContainsKey(p.Key)).Select(p => p.Key + " was added"))
            .Concat(due.Where(p => here.GetValueOrDefault(p.Key) != p.Value).Select(p => p.Key + " was changed"))
            .FirstOrDefault();
    }

    private static Dictionary<string, string> PartsOf(IEnumerable<Migration> steps)
    {
        using var pattern = new SqliteConnection("Data Source=:memory:;Pooling=False");
        pattern.Open();
        Migrator.MakeTables(pattern, steps);
        return PartsOf(pattern);
    }

    private static Dictionary<string, string> PartsOf(SqliteConnection connection) =>
        connection.Query<(string Name, string Sql)>(PartsSql).ToDictionary(p => p.Name, p => p.Sql);

    // What SQLite makes for itself has its name.
    private const string PartsSql = """
        SELECT type || ' ' || name, sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite\_%' ESCAPE '\'
        """;
}
