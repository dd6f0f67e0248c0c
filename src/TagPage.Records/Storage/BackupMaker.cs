namespace TagPage.Records.Storage;

/// <summary>Copies the live database into the data folder's backups, through SQLite, and looks the copy through before it gets its name.</summary>
public sealed class BackupMaker(Database database, DataFolder folder, TimeProvider clock)
{
    /// <exception cref="UnsoundBackupException">The copy did not pass its check.</exception>
    public BackupFile Make(string why)
    {
        var file = BackupFile.At(folder.Backups, clock.GetUtcNow(), why);
        BackupFolder.Place(file, Write);
        return file;
    }

    private void Write(string unfinished)
    {
        database.CopyTo(unfinished);
        CarriedKeys.Add(folder, unfinished);
        using var copy = FullCheck.Open(unfinished);
        if (FullCheck.Finding(copy) is { } finding)
            throw new UnsoundBackupException(finding);
        if (!Migrator.StepsOf(copy).SequenceEqual(database.Read(Migrator.StepsOf)))
            throw new UnsoundBackupException("its tables are not those of the shop");
    }
}

/// <summary>A backup was written and did not pass its check; it is gone again.</summary>
public sealed class UnsoundBackupException(string finding) : IOException($"The backup did not pass its check: {finding}");
