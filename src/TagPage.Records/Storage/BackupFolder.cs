namespace TagPage.Records.Storage;

/// <summary>A folder with backups, the data folder's own or a second one. Files that are named otherwise are the owner's and left alone.</summary>
public sealed class BackupFolder(string path)
{
    /// <summary>What is left unfinished for as long was left behind by a program that ended.</summary>
    private static readonly TimeSpan Forsaken = TimeSpan.FromHours(1);

    public string Path => path;

    /// <summary>Newest first; none where the folder is missing or may not be looked into.</summary>
    public IReadOnlyList<BackupFile> List() =>
        [.. Files().Select(BackupFile.Of).OfType<BackupFile>().OrderByDescending(b => b.MadeAt).ThenBy(b => b.Name, StringComparer.Ordinal)];

    private string[] Files()
    {
        try
        {
            return Directory.Exists(path) ? Directory.GetFiles(path) : [];
        }
        catch (UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>The newest for the long run; one dated ahead comes from a clock that was wrong.</summary>
    public BackupFile? Newest(DateTimeOffset now) => List().FirstOrDefault(b => b.IsRegular && b.MadeAt <= now);

    /// <summary>
    /// Has a file written beside its place and puts it there once <paramref name="write"/> has returned: whatever has a
    /// backup's name is whole.
    /// </summary>
    public static void Place(BackupFile file, Action<string> write)
    {
        var unfinished = file.Path + "." + Guid.NewGuid().ToString("N")[..8] + BackupFile.Unfinished;
        try
        {
            write(unfinished);
            File.Move(unfinished, file.Path, overwrite: true);
        }
        finally
        {
            File.Delete(unfinished);
        }
    }

    /// <summary>Deletes what the plan no longer keeps, and what was left unfinished.</summary>
    public void Tidy(BackupPlan plan, DateTimeOffset now)
    {
        foreach (var surplus in plan.Surplus(List(), now))
            File.Delete(surplus.Path);
        foreach (var unfinished in Directory.EnumerateFiles(path).Where(f => IsUnfinished(f) && File.GetLastWriteTimeUtc(f) < now.UtcDateTime - Forsaken))
            File.Delete(unfinished);
    }

    /// <summary>Also what SQLite left beside one that it was writing to.</summary>
    private static bool IsUnfinished(string file) =>
        file.EndsWith(BackupFile.Unfinished, StringComparison.Ordinal) || file.EndsWith(BackupFile.Unfinished + "-journal", StringComparison.Ordinal);
}
