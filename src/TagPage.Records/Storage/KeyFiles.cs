using System.Xml;
using System.Xml.Linq;

namespace TagPage.Records.Storage;

/// <summary>The secrets in keys/: the program's own and those that the framework signs cookies with.</summary>
public static class KeyFiles
{
    public static bool Any(DataFolder folder) => All(folder).Any();

    /// <exception cref="CannotStartException">One is truncated or damaged. A new one in its place would void links and sign-ins.</exception>
    public static void RefuseDamaged(DataFolder folder)
    {
        if (All(folder).FirstOrDefault(f => !IsWhole(f)) is { } damaged)
            throw new CannotStartException(
                $"{damaged} is damaged; put it back from a copy, or without one make new keys with TagPage.Web new-keys.");
    }

    /// <summary>Keys that came from elsewhere may have been open to others on their way.</summary>
    public static void CloseToOthers(DataFolder folder)
    {
        DataFolder.CloseToOthers(folder.Keys);
        foreach (var file in All(folder))
            DataFolder.CloseToOthers(file);
    }

    public static void CopyTo(DataFolder folder, DataFolder target)
    {
        foreach (var file in All(folder))
            File.Copy(file, Path.Combine(target.Keys, Path.GetFileName(file)));
        CloseToOthers(target);
    }

    /// <summary>Deletes them all; whoever needs one makes a new one.</summary>
    public static void Delete(DataFolder folder)
    {
        foreach (var file in All(folder).ToList())
            File.Delete(file);
    }

    /// <summary>Written completely and to the disk, readable by nobody else, before it gets its name: a power cut leaves a whole key or none.</summary>
    public static void Write(string file, ReadOnlySpan<byte> key)
    {
        var options = new FileStreamOptions { Mode = FileMode.Create, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        using (var fresh = new FileStream(file + ".new", options))
        {
            fresh.Write(key);
            fresh.Flush(flushToDisk: true);
        }
        File.Move(file + ".new", file);
    }

    internal static IEnumerable<string> All(DataFolder folder) => Directory.EnumerateFiles(folder.Keys);

    private static bool IsWhole(string file) => Path.GetExtension(file) switch
    {
        ".key" => new FileInfo(file).Length == ServerKey.Bytes,
        ".xml" => IsXml(file),
        _ => true,
    };

    private static bool IsXml(string file)
    {
        try
        {
            return XDocument.Load(file).Root is not null;
        }
        catch (XmlException)
        {
            return false;
        }
    }
}
