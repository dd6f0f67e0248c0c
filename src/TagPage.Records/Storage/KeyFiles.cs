using System.Xml;
using System.Xml.Linq;

namespace TagPage.Records.Storage;

/// <summary>The secrets in keys/: the program's own and those that the framework signs cookies with.</summary>
public static class KeyFiles
{
    /// <summary>Salt and key that a passphrase for backups was made into.</summary>
    private const int SealBytes = 48;

    public static bool Any(DataFolder folder) => All(folder).Any();

    /// <exception cref="CannotStartException">One is truncated or damaged. A new one in its place would void links and sign-ins.</exception>
    public static void RefuseDamaged(DataFolder folder)
    {
        if (All(folder).FirstOrDefault(f => !IsWhole(f)) is { } damaged)
            throw new CannotStartException($"{damaged} is damaged; put it back from a backup, or " + (IsSeal(damaged)
                ? "delete it and set the passphrase for backups again: until then they are not sealed."
                : "without one make new keys with TagPage.Web new-keys."));
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

    /// <summary>Deletes them all; whoever needs one makes a new one. The seal of backups stays while it is whole: without it they would travel unsealed.</summary>
    public static void Delete(DataFolder folder)
    {
        foreach (var file in All(folder).Where(f => !IsSeal(f) || !IsWhole(f)).ToList())
            File.Delete(file);
    }

    /// <summary>Written completely and to the disk, readable by nobody else, before it gets its name: a power cut leaves a whole key or none.</summary>
    public static void Write(string file, ReadOnlySpan<byte> key, bool overwrite = false)
    {
        var options = new FileStreamOptions { Mode = FileMode.Create, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        using (var fresh = new FileStream(file + ".new", options))
        {
            fresh.Write(key);
            fresh.Flush(flushToDisk: true);
        }
        File.Move(file + ".new", file, overwrite);
    }

    internal static IEnumerable<string> All(DataFolder folder) => Directory.EnumerateFiles(folder.Keys);

    private static bool IsWhole(string file) => Path.GetExtension(file) switch
    {
        ".key" => new FileInfo(file).Length == ServerKey.Bytes,
        ".xml" => IsXml(file),
        ".seal" => new FileInfo(file).Length == SealBytes,
        _ => true,
    };

    private static bool IsSeal(string file) => Path.GetExtension(file) == ".seal";

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
