using Dapper;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace TagPage.Records.Storage;

/// <summary>
/// Checks the database file without changing a byte of it, so that nothing is written to a damaged file or another program's.
/// <c>application_id</c> says whose it is, <c>user_version</c> whether it is a copy that nobody started from yet.
/// </summary>
public static class RecordsFile
{
    /// <summary>"TagP", in the head of every database of this program.</summary>
    public const int ApplicationId = 0x54616750;

    internal const int Copy = 1;

    private const int CannotOpen = 14;

    /// <exception cref="CannotStartException">It is not a sound database of this program, or missing where there was one.</exception>
    public static void Judge(DataFolder folder, IReadOnlyList<Migration> known)
    {
        if (IsThere(folder))
            JudgeFile(folder, known);
        else
            RefuseLoss(folder);
    }

    private static void JudgeFile(DataFolder folder, IReadOnlyList<Migration> known)
    {
        try
        {
            JudgeHead(folder);
            using var connection = Look(folder);
            if (DatabaseCheck.Finding(connection) is { } finding)
                throw Damaged(folder, finding);
            Migrator.RefuseOthers(connection, folder, known);
            RefuseReadOnly(folder);
        }
        catch (SqliteException e) when (DatabaseFault.IsDamage(e))
        {
            throw Damaged(folder, e.Message);
        }
        catch (Exception e) when (e is SqliteException { SqliteErrorCode: CannotOpen } or UnauthorizedAccessException)
        {
            throw new CannotStartException($"{folder.DatabaseFile} cannot be opened; give this user permission to read and write it.");
        }
    }

    /// <summary>Marks a new file as this program's, and removes the mark of a backup, with the keys it carries. Both before the journal is the write-ahead log.</summary>
    public static void Prepare(DataFolder folder)
    {
        var isNew = !IsThere(folder);
        if (!isNew && File.Exists(Log(folder)))
            return;
        using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = folder.DatabaseFile, Pooling = false }.ToString());
        connection.Open();
        if (isNew)
            connection.Execute($"PRAGMA journal_mode = MEMORY; PRAGMA application_id = {ApplicationId};");
        else if (CarriedKeys.AreIn(connection) || connection.ExecuteScalar<long>("PRAGMA user_version") != 0)
        {
            CarriedKeys.Unpack(connection, folder);
            connection.Execute(CarriedKeys.DropSql + "PRAGMA user_version = 0");
        }
    }

    /// <summary>Makes a finished copy one file, which says of itself that no log belongs to it.</summary>
    public static void MarkAsCopy(SqliteConnection connection) => connection.Execute($"PRAGMA journal_mode = DELETE; PRAGMA user_version = {Copy};");

    private const string GoBack = "it was left unchanged: go back to a backup, as “A bad day” in the manual says.";

    /// <summary>False also for a file that a cut in power left empty before anything was in it.</summary>
    public static bool IsThere(DataFolder folder) => new FileInfo(folder.DatabaseFile) is { Exists: true, Length: > 0 };

    /// <summary>Whether there is a database that is certainly the invented shop's, of this or of another version.</summary>
    public static bool IsDemo(DataFolder folder)
    {
        try
        {
            JudgeHead(folder);
            using var connection = Look(folder);
            return OtherTables.IsDemo(connection);
        }
        catch (Exception e) when (e is SqliteException or CannotStartException)
        {
            return false;
        }
    }

    private static string Log(DataFolder folder) => folder.DatabaseFile + "-wal";

    private static void RefuseLoss(DataFolder folder)
    {
        if (KeyFiles.Any(folder) || File.Exists(Log(folder)))
            throw new CannotStartException(
                $"{folder.DatabaseFile} is {(File.Exists(folder.DatabaseFile) ? "empty" : "missing")}, but next to it are files that belong to a shop: go back to a backup, or name an empty data folder for a new shop.");
    }

    /// <summary>Without a log the file is all there is and is read as unchangeable: SQLite then makes no files beside it.</summary>
    private static SqliteConnection Look(DataFolder folder)
    {
        var file = File.Exists(Log(folder)) ? folder.DatabaseFile : new Uri(folder.DatabaseFile).AbsoluteUri + "?immutable=1";
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Mode = SqliteOpenMode.ReadOnly, Pooling = false }.ToString());
        connection.Open();
        return connection;
    }

    /// <summary>
    /// The file's own head, not what a log would make of it. As a file: nothing of this process has it open yet, so no lock
    /// of SQLite's is lost.
    /// </summary>
    private static void JudgeHead(DataFolder folder)
    {
        var head = FileHead.Read(folder.DatabaseFile);
        if (!head.IsSqlite)
            throw new CannotStartException($"{folder.DatabaseFile} is not a database, or its beginning is damaged; {GoBack}");
        if (!head.IsOurs)
            throw new CannotStartException($"{folder.DatabaseFile} belongs to another program; {GoBack}");
        if (head.IsCopy && File.Exists(Log(folder)))
            throw new CannotStartException(
                $"{folder.DatabaseFile} is a copy, but {Log(folder)} is left from the database before it; move that and tagpage.db-shm away.");
    }

    private static void RefuseReadOnly(DataFolder folder)
    {
        using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = folder.DatabaseFile, Mode = SqliteOpenMode.ReadWrite, Pooling = false }.ToString());
        connection.Open();
        if (raw.sqlite3_db_readonly(connection.Handle, "main") != 0)
            throw new CannotStartException($"{folder.DatabaseFile} is read-only; give this user permission to write it.");
    }

    private static CannotStartException Damaged(DataFolder folder, string finding) =>
        new($"{folder.DatabaseFile} is damaged ({finding.ReplaceLineEndings(" ")}); {GoBack}");
}
