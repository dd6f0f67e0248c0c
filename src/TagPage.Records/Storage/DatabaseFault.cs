using Microsoft.Data.Sqlite;

namespace TagPage.Records.Storage;

/// <summary>The database failures that the program can explain to people.</summary>
public static class DatabaseFault
{
    // Result codes of SQLite, https://www.sqlite.org/rescode.html
    private const int Error = 1, ReadOnly = 8, Corrupt = 11, Full = 13, CannotOpen = 14, Constraint = 19, NotADatabase = 26;

    /// <summary>ENOSPC of Linux and macOS, ERROR_DISK_FULL of Windows: what a file beside the database meets.</summary>
    private const int NoSpace = 28, DiskFull = unchecked((int)0x80070070);

    public static bool IsFullDisk(Exception? fault) =>
        fault is SqliteException { SqliteErrorCode: Full } or IOException { HResult: NoSpace or DiskFull };

    /// <summary>A page or the head of the file is not what SQLite wrote.</summary>
    public static bool IsDamage(Exception? fault) => fault is SqliteException { SqliteErrorCode: Corrupt or NotADatabase };

    public static bool IsUnusableFile(Exception? fault) => fault is SqliteException { SqliteErrorCode: ReadOnly or CannotOpen or NotADatabase };

    /// <summary>The statement does not fit what is in the database, which is no worse for it.</summary>
    public static bool IsOfTheStatement(SqliteException fault) => fault.SqliteErrorCode is Error or Constraint;

    /// <summary>SQLite's own words, without the number and quotes that the library puts around them.</summary>
    public static string Reason(SqliteException fault) => fault.Message.Split('\'', 2)[^1].TrimEnd('.').TrimEnd('\'');
}
