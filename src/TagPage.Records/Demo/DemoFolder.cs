using TagPage.Records.Storage;

namespace TagPage.Records.Demo;

/// <summary>The data folder of the invented shop.</summary>
public static class DemoFolder
{
    /// <summary>Deletes all that the demo keeps, of whatever version, so that it begins anew.</summary>
    /// <exception cref="CannotStartException">The folder holds anything else than a demo, which is left as it is; or a program runs on it.</exception>
    public static void Clear(DataFolder folder)
    {
        if (!RecordsFile.IsThere(folder))
            return;
        if (!RecordsFile.IsDemo(folder))
            throw new CannotStartException($"{folder.Root} holds records that are not the demo’s; they were left as they are. Name another folder with --TagPage:DataFolder=….");
        using var held = new FolderLock(folder);
        held.Take();
        foreach (var place in new[] { folder.Mail, folder.Uploads, folder.Backups, folder.Keys })
            Directory.Delete(place, recursive: true);
        // The database last: until it is gone the folder is a demo's, and can be cleared again.
        foreach (var end in new[] { "-wal", "-shm", "" })
            File.Delete(folder.DatabaseFile + end);
    }
}
