using System.Runtime.CompilerServices;
using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Storage;

/// <summary>
/// Statements that are prepared once a connection: for what strangers ask all day, where preparing takes longer than
/// running. Everything else goes through Dapper's own calls.
/// </summary>
internal static class KeptStatements
{
    private static readonly ConditionalWeakTable<SqliteConnection, Dictionary<string, SqliteCommand>> Kept = [];

    /// <summary>All rows of one SELECT.</summary>
    /// <param name="connection">Lent to this thread alone.</param>
    /// <param name="sql">A constant: each text is kept as long as the connection.</param>
    /// <param name="values">By their names in the text, as SQLite knows them: text and numbers.</param>
    public static List<T> QueryKept<T>(this SqliteConnection connection, string sql, params ReadOnlySpan<(string Name, object Value)> values)
    {
        using var reader = connection.ReadKept(sql, values);
        return reader.Parse<T>().AsList();
    }

    /// <summary>For a text of several SELECTs. Dispose the reader before the same text is asked again.</summary>
    public static SqliteDataReader ReadKept(this SqliteConnection connection, string sql, params ReadOnlySpan<(string Name, object Value)> values)
    {
        var kept = Kept.GetValue(connection, _ => []);
        if (!kept.TryGetValue(sql, out var command))
        {
            command = connection.CreateCommand();
            command.CommandText = sql;
            kept[sql] = command;
        }
        command.Parameters.Clear();
        foreach (var (name, value) in values)
            command.Parameters.AddWithValue(name, value);
        return command.ExecuteReader();
    }

    /// <summary>The rows of the next SELECT.</summary>
    public static List<T> Next<T>(this SqliteDataReader reader)
    {
        var rows = reader.Parse<T>().AsList();
        reader.NextResult();
        return rows;
    }
}
