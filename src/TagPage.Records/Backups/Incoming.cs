using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Records.Backups;

/// <summary>Takes a file that somebody wants to go back to into a folder of its own, opens its seal, and finds out whether it is a sound backup of this program.</summary>
internal static class Incoming
{
    /// <summary>Bytes. What is larger was not made by a shop.</summary>
    public const long Most = 8_000_000_000;

    /// <exception cref="NotRestoredException">It is something else, and why.</exception>
    public static void Take(string file, DataFolder place, IReadOnlyList<Migration> known, string? passphrase)
    {
        JudgeFile(file, place);
        try
        {
            if (SealedFile.IsSealed(file))
                Unseal(file, place.DatabaseFile, passphrase);
            else
                File.Copy(file, place.DatabaseFile);
        }
        catch (UnauthorizedAccessException)
        {
            throw new NotRestoredException(RestoreFault.Unreadable);
        }
        JudgeHead(place.DatabaseFile);
        Judge(place, known);
    }

    private static void JudgeFile(string file, DataFolder place)
    {
        if (Directory.Exists(file))
            throw new NotRestoredException(RestoreFault.IsFolder);
        var found = new FileInfo(file);
        if (!found.Exists)
            throw new NotRestoredException(RestoreFault.Missing);
        // What it leads to may change between the check and the copy.
        if (found.LinkTarget is not null)
            throw new NotRestoredException(RestoreFault.IsLink);
        if (found.Length == 0)
            throw new NotRestoredException(RestoreFault.Empty);
        if (found.Length > Most)
            throw new NotRestoredException(RestoreFault.TooLarge);
        if (found.Length * 3 > new DriveInfo(place.Root).AvailableFreeSpace)
            throw new NotRestoredException(RestoreFault.NoRoom);
        if (File.Exists(file + "-wal") || File.Exists(file + "-journal"))
            throw new NotRestoredException(RestoreFault.HasLog);
    }

    private static void Unseal(string file, string to, string? passphrase)
    {
        if (string.IsNullOrEmpty(passphrase))
            throw new NotRestoredException(RestoreFault.NeedsPassphrase);
        using var source = File.OpenRead(file);
        using var target = new FileStream(to, FileMode.CreateNew, FileAccess.Write);
        if (!SealedFile.Open(source, target, (salt, rounds) => SealKey.Of(passphrase, salt, rounds)))
            throw new NotRestoredException(RestoreFault.WrongPassphrase);
    }

    /// <summary>Its head alone: nothing of a file that anybody may have made is run before it is known whose it is.</summary>
    private static void JudgeHead(string file)
    {
        var head = FileHead.Read(file);
        if (!head.IsSqlite)
            throw new NotRestoredException(RestoreFault.NoBackup);
        if (!head.IsOurs)
            throw new NotRestoredException(RestoreFault.OtherProgram);
        var (bytes, whole) = (new FileInfo(file).Length, head.Pages * head.PageBytes);
        if (bytes < whole)
            throw new NotRestoredException(RestoreFault.Cut);
        if (bytes > whole)
            throw new NotRestoredException(RestoreFault.Damaged, "something was added behind its end");
        // The live file cannot take in pages of another size.
        if (head.PageBytes != 4096)
            throw new NotRestoredException(RestoreFault.Damaged, "its pages have another size");
    }

    private static void Judge(DataFolder place, IReadOnlyList<Migration> known)
    {
        try
        {
            using var connection = FullCheck.Open(place.DatabaseFile);
            if (FullCheck.Damage(connection) is { } damage)
                throw new NotRestoredException(RestoreFault.Damaged, damage);
            if (Migrator.IsNewer(connection, known))
                throw new NotRestoredException(RestoreFault.Newer);
            if (Migrator.HasOtherTables(connection, known))
                throw new NotRestoredException(RestoreFault.OtherTables);
            if (SchemaCheck.Finding(connection, known) is { } changed)
                throw new NotRestoredException(RestoreFault.Changed, changed);
            if (FullCheck.Loose(connection) is { } loose)
                throw new NotRestoredException(RestoreFault.LooseRows, loose);
        }
        // Whatever a file that anybody may have made brings SQLite to say.
        catch (SqliteException e) when (!DatabaseFault.IsFullDisk(e))
        {
            throw new NotRestoredException(RestoreFault.Damaged, e.Message);
        }
    }
}
