using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Storage;

/// <summary>
/// Databases whose tables another version made: before a first release the text of a migration may change, and what it made
/// then no longer fits this program's queries. Told at the start, not by the first query that finds no such table.
/// </summary>
internal static class OtherTables
{
    /// <summary>False also for one that was made before sums were kept.</summary>
    public static bool KeepsSums(SqliteConnection connection) => connection.ExecuteScalar<bool>(KeepsSumsSql);

    private const string KeepsSumsSql = "SELECT EXISTS (SELECT 1 FROM pragma_table_info('migration') WHERE name = 'sum')";

    public static bool HasAny(SqliteConnection connection) => connection.ExecuteScalar<bool>(HasAnySql);

    private const string HasAnySql = "SELECT EXISTS (SELECT 1 FROM sqlite_schema WHERE type = 'table')";

    /// <summary>Marked as the invented shop's by whatever version made it.</summary>
    public static bool IsDemo(SqliteConnection connection) =>
        connection.ExecuteScalar<bool>(HasMarkSql) && connection.ExecuteScalar<bool>(IsMarkedSql);

    private const string HasMarkSql = "SELECT EXISTS (SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = 'demo')";

    private const string IsMarkedSql = "SELECT EXISTS (SELECT 1 FROM demo WHERE id = 1)";

    public static CannotStartException Refusal(SqliteConnection connection, DataFolder folder) => new(IsDemo(connection)
        ? $"The demo in {folder.Root} was made by another version of TagPage. Begin again with TagPage.Web demo --start-over, which deletes its records."
        : $"{folder.DatabaseFile} was made by another version of TagPage, whose tables differ; it was left unchanged. Start that version, or name another data folder with --TagPage:DataFolder=….");
}
