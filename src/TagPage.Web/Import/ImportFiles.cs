using TagPage.Records.Import;
using TagPage.Web.Csv;

namespace TagPage.Web.Import;

/// <summary>The files of one import by name, each within its limit of size.</summary>
public sealed class ImportFiles
{
    private readonly Dictionary<string, byte[]> _files = [];
    private readonly List<string> _second = [];

    public IReadOnlyDictionary<string, byte[]> ByName => _files;

    /// <summary>Files of a folder that are there under another of their names too.</summary>
    public IReadOnlyList<string> Second => _second;

    /// <summary>What was uploaded under a key; null when there is nothing, or no longer.</summary>
    public static ImportFiles? Of(Uploads uploads, string key) => uploads.FolderOf(key) is { } folder ? From(folder) : null;

    /// <summary>Known files of a folder; any others are left alone.</summary>
    public static ImportFiles From(string folder)
    {
        var files = new ImportFiles();
        foreach (var name in ImportSheets.FileNames)
        {
            var path = Path.Combine(folder, name);
            if (File.Exists(path) && !files.TryAdd(name, ReadUpToLimit(path)))
                files._second.Add(name);
        }
        return files;
    }

    /// <summary>Adds a file of a known name, whatever its case; false for any other name and for a second file of the same.</summary>
    public bool TryAdd(string name, byte[] bytes) => ImportSheets.Known(name) is { } known && _files.TryAdd(known, bytes);

    /// <summary>One byte more than allowed is enough to see that a file is too large.</summary>
    private static byte[] ReadUpToLimit(string path)
    {
        using var stream = File.OpenRead(path);
        var bytes = new byte[Math.Min(stream.Length, SheetText.MostBytes + 1)];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
