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

    // But for what SQLite makes for itself. Its beginning of a name alone says nothing: a file may hold a trigger with such a name.
    private const string PartsSql = """
        SELECT type || ' ' || name, COALESCE(sql, '') FROM sqlite_schema
        WHERE NOT (type = 'index' AND sql IS NULL) AND NOT (type = 'table' AND name IN ('sqlite_sequence', 'sqlite_stat1', 'sqlite_stat4'))
        """;
}
