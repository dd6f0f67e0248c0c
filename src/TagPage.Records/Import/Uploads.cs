using TagPage.Records.Storage;

namespace TagPage.Records.Import;

/// <summary>
/// Files that were sent and checked, kept in the data folder until the owner says yes, for an hour at most.
/// Each set has a random key, which is also the form key of its import.
/// </summary>
public sealed class Uploads(DataFolder folder, TimeProvider clock)
{
    private const string Sent = "sent";

    public static readonly TimeSpan Kept = TimeSpan.FromHours(1);

    /// <summary>Keeps the files and returns their key.</summary>
    /// <param name="files">Name and content of each.</param>
    public string Keep(IReadOnlyDictionary<string, byte[]> files)
    {
        Sweep();
        var key = FormKey.New();
        var place = Directory.CreateDirectory(Place(key)).FullName;
        foreach (var (name, bytes) in files)
            File.WriteAllBytes(Path.Combine(place, name), bytes);
        Directory.SetLastWriteTimeUtc(place, clock.GetUtcNow().UtcDateTime);
        return key;
    }

    /// <summary>Keeps one large file, written as it comes in.</summary>
    public async Task<string> Keep(Func<Stream, Task> write)
    {
        Sweep();
        var key = FormKey.New();
        var place = Directory.CreateDirectory(Place(key)).FullName;
        await using (var file = new FileStream(Path.Combine(place, Sent), FileMode.CreateNew))
            await write(file);
        Directory.SetLastWriteTimeUtc(place, clock.GetUtcNow().UtcDateTime);
        return key;
    }

    /// <summary>Where the large file of a key is.</summary>
    public string SentOf(string key) => Path.Combine(Place(key), Sent);

    /// <summary>Adds a file to those of a key, if they are still there; they are kept no longer for it.</summary>
    public void Add(string key, string name, byte[] bytes)
    {
        if (FolderOf(key) is not { } place)
            return;
        var since = Directory.GetLastWriteTimeUtc(place);
        File.WriteAllBytes(Path.Combine(place, name), bytes);
        Directory.SetLastWriteTimeUtc(place, since);
    }

    /// <summary>The folder with the files of a key; null when there are none, or no longer.</summary>
    public string? FolderOf(string key)
    {
        Sweep();
        return IsKey(key) && Directory.Exists(Place(key)) ? Place(key) : null;
    }

    public void Remove(string key)
    {
        if (IsKey(key) && Directory.Exists(Place(key)))
            Directory.Delete(Place(key), recursive: true);
    }

    /// <summary>Deletes all of them, confirmed or not.</summary>
    public void RemoveAll()
    {
        foreach (var place in Directory.EnumerateDirectories(folder.Uploads))
            Directory.Delete(place, recursive: true);
    }

    /// <summary>Deletes what nobody confirmed within the hour.</summary>
    public void Sweep()
    {
        var oldest = clock.GetUtcNow().UtcDateTime - Kept;
        foreach (var place in Directory.EnumerateDirectories(folder.Uploads).Where(p => Directory.GetLastWriteTimeUtc(p) <= oldest))
            Directory.Delete(place, recursive: true);
    }

    private string Place(string key) => Path.Combine(folder.Uploads, key);

    private static bool IsKey(string key) => key.Length == 32 && key.All(char.IsAsciiHexDigitLower);
}
