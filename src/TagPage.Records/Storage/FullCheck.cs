using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Storage;

/// <summary>All that SQLite can find wrong with a database: its pages, its indexes, its rules, and rows that refer to nothing.</summary>
internal static class FullCheck
{
    /// <summary>Opens a file that nobody else has open. Able to write, though it does not: read-only, SQLite does not know a table's CHECKs.</summary>
    public static SqliteConnection Open(string file)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Mode = SqliteOpenMode.ReadWrite, Pooling = false }.ToString());
        connection.Open();
        connection.Execute("PRAGMA query_only = ON; PRAGMA trusted_schema = OFF;");
        return connection;
    }

    /// <summary>The first fault; null if there is none.</summary>
    public static string? Finding(SqliteConnection connection) => Damage(connection) ?? Loose(connection);

    public static string? Damage(SqliteConnection connection) =>
        connection.ExecuteScalar<string>("PRAGMA integrity_check(1)") is var told and not "ok" ? told : null;

    /// <summary>A row that refers to one that is not there.</summary>
    public static string? Loose(SqliteConnection connection) => connection.QueryFirstOrDefault<string>(LooseSql);

    private const string LooseSql = """
        SELECT 'a row of ' || "table" || ' refers to one of ' || "parent" || ' that is not there' FROM pragma_foreign_key_check LIMIT 1
        """;
}
