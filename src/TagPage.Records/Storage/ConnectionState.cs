using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace TagPage.Records.Storage;

internal static class ConnectionState
{
    /// <summary>True where no transaction is open.</summary>
    public static bool IsAtRest(this SqliteConnection connection) => raw.sqlite3_get_autocommit(connection.Handle) != 0;
}
