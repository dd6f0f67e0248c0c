using System.Globalization;
using TagPage.Records.Backups;
using TagPage.Records.Storage;

namespace TagPage.Web.Words;

/// <summary>Backups in words for the owner.</summary>
public static class BackupWords
{
    public static string Why(BackupFile backup) => backup.Why switch
    {
        BackupFile.Nightly => "made by the program",
        BackupFile.ByHand => "made by you",
        BackupFile.BeforeImport => "made before records were brought in",
        BackupFile.BeforeRestore => "made before going back to a backup",
        _ => "made before a new version of the program",
    };

    public static string Fault(BackupFault fault) => fault switch
    {
        BackupFault.DiskFull => "There is no room left on the disk. Delete or move what you do not need there.",
        BackupFault.FolderMissing => "Its folder is not there. If it is on a separate drive, plug that in.",
        BackupFault.NotAFolder => "A file is where its folder should be. Move that file away.",
        BackupFault.NotWritable => "The program is not allowed to write there. Give write permission to the user it runs as.",
        BackupFault.Damaged => "What was written did not pass its check. Keep the older backups. Settings → Is everything set up? says whether the records are damaged or the disk that backups are written to; “A bad day” in the manual says what to do then.",
        _ => "See that the folder for backups is there, can be written and is on a disk that works. The program’s log says what stood in the way.",
    };

    /// <summary>Why nothing was done: what is needed before it could not be made.</summary>
    public static string NotFirst(BackupFault fault) => $"No backup could be made first, so nothing was changed. {Fault(fault)}";

    /// <summary>14 Mar 2027, 3:00.</summary>
    /// <param name="at">On the clock on the shop's wall.</param>
    public static string At(DateTimeOffset at) => string.Create(CultureInfo.InvariantCulture, $"{Formats.Day(DateOnly.FromDateTime(at.DateTime))}, {at.DateTime:H:mm}");

    public static string Size(long bytes) => bytes switch
    {
        < 1_000_000 => $"{Math.Max(1, bytes / 1000)} KB",
        < 1_000_000_000 => string.Create(CultureInfo.InvariantCulture, $"{bytes / 1_000_000m:0.#} MB"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{bytes / 1_000_000_000m:0.#} GB"),
    };
}
