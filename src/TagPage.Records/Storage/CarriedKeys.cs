using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Storage;

/// <summary>
/// The keys of the data folder, in a table of a backup: without them every link sent before would be void on a new machine. A
/// program that starts from the file takes them out and drops the table.
/// </summary>
internal static class CarriedKeys
{
    public static void Add(DataFolder folder, string backup)
    {
        var keys = KeyFiles.All(folder).Select(f => new { Name = Path.GetFileName(f), Bytes = File.ReadAllBytes(f) }).ToList();
        if (keys.Count == 0)
            return;
        using var connection = Open(backup);
        connection.Execute(TableSql);
        connection.Execute("INSERT INTO carried_key (name, bytes) VALUES (@Name, @Bytes)", keys);
    }

    internal const string TableSql = "CREATE TABLE carried_key (name TEXT PRIMARY KEY, bytes BLOB NOT NULL) STRICT, WITHOUT ROWID";

    /// <summary>Writes them into a folder that has none; where there are keys, those stay.</summary>
    public static void Unpack(SqliteConnection connection, DataFolder folder)
    {
        if (KeyFiles.Any(folder) || !AreIn(connection))
            return;
        foreach (var (name, bytes) in connection.Query<(string Name, byte[] Bytes)>("SELECT name, bytes FROM carried_key").Where(k => IsPlain(k.Name)))
            KeyFiles.Write(Path.Combine(folder.Keys, name), bytes);
    }

    public static bool AreIn(SqliteConnection connection) => connection.ExecuteScalar<bool>(IsThereSql);

    private const string IsThereSql = "SELECT EXISTS (SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = 'carried_key')";

    /// <summary>Leaves nothing of them in the file.</summary>
    public const string DropSql = "PRAGMA secure_delete = ON; DROP TABLE IF EXISTS carried_key;";

    /// <summary>A name from a file that anybody may have made must not lead out of its folder.</summary>
    private static bool IsPlain(string name) => name == Path.GetFileName(name) && name.Length is > 0 and <= 100 && name is not ("." or "..");

    private static SqliteConnection Open(string file)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Pooling = false }.ToString());
        connection.Open();
        return connection;
    }
}
