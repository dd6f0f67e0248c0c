using System.Globalization;

namespace TagPage.Records.Storage;

/// <summary>A backup that passed its check: nothing gets such a name before it has.</summary>
/// <param name="Path">Of the file.</param>
/// <param name="MadeAt">By its name.</param>
/// <param name="Why">One of the reasons below.</param>
/// <param name="IsSealed">Encrypted to the passphrase.</param>
public sealed record BackupFile(string Path, DateTimeOffset MadeAt, string Why, bool IsSealed)
{
    public const string Nightly = "nightly", ByHand = "by-hand", BeforeImport = "before-import", BeforeRestore = "before-restore", BeforeVersion = "before-";

    /// <summary>Of a file that is not finished yet.</summary>
    public const string Unfinished = ".new";

    private const string Stamp = "yyyyMMdd-HHmmss", Open = ".db", Closed = ".sealed";

    public string Name => System.IO.Path.GetFileName(Path);

    public long Bytes => new FileInfo(Path).Length;

    /// <summary>Made for the long run, not because something was about to happen.</summary>
    public bool IsRegular => Why is Nightly or ByHand;

    public static BackupFile At(string folder, DateTimeOffset now, string why) =>
        new(System.IO.Path.Combine(folder, $"{now.UtcDateTime.ToString(Stamp, CultureInfo.InvariantCulture)}-{why}{Open}"), now, why, IsSealed: false);

    /// <summary>The same backup in another folder.</summary>
    public BackupFile In(string folder, bool isSealed) =>
        this with { Path = System.IO.Path.Combine(folder, System.IO.Path.ChangeExtension(Name, isSealed ? Closed : Open)), IsSealed = isSealed };

    /// <summary>Null for a file whose name is not a backup's: it is the owner's own.</summary>
    public static BackupFile? Of(string path)
    {
        var (name, ending) = (System.IO.Path.GetFileNameWithoutExtension(path), System.IO.Path.GetExtension(path));
        return ending is Open or Closed && name.Length > Stamp.Length + 1 && name[Stamp.Length] == '-'
            && DateTimeOffset.TryParseExact(name[..Stamp.Length], Stamp, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var at)
            ? new BackupFile(path, at, name[(Stamp.Length + 1)..], ending == Closed)
            : null;
    }
}
