using TagPage.Records.Storage;

namespace TagPage.Records.Backups;

/// <summary>A data folder of its own for a file that is not yet known to be sound; gone again with all that is in it.</summary>
internal sealed class RestoringPlace(DataFolder data) : IDisposable
{
    public DataFolder Folder { get; } = new(Path.Combine(In(data), Guid.NewGuid().ToString("N")));

    /// <summary>Deletes what a program that was ended left behind.</summary>
    public static void Sweep(DataFolder data, DateTimeOffset now)
    {
        if (!Directory.Exists(In(data)))
            return;
        foreach (var left in Directory.EnumerateDirectories(In(data)).Where(f => Directory.GetLastWriteTimeUtc(f) < now.UtcDateTime.AddHours(-1)))
            Directory.Delete(left, recursive: true);
    }

    private static string In(DataFolder data) => Path.Combine(data.Root, "restoring");

    public void Dispose() => Directory.Delete(Folder.Root, recursive: true);
}
