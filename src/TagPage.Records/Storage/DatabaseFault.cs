using Microsoft.Data.Sqlite;

namespace TagPage.Records.Storage;

/// <summary>What of a database's failure the program can tell people about.</summary>
public static class DatabaseFault
{
    // Result codes of SQLite, https://www.sqlite.org/rescode.html
    private const int ReadOnly = 8, Full = 13, CannotOpen = 14, NotADatabase = 26;

    public static bool IsFullDisk(Exception? fault) => fault is SqliteException { SqliteErrorCode: Full };

    public static bool IsUnusableFile(Exception? fault) => fault is SqliteException { SqliteErrorCode: ReadOnly or CannotOpen or NotADatabase };
}
