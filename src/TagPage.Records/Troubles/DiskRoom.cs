using TagPage.Records.Storage;

namespace TagPage.Records.Troubles;

/// <summary>How much room is left for what is still to be written.</summary>
public static class DiskRoom
{
    public const long Little = 500_000_000, HardlyAny = 50_000_000;

    public static DiskFilling? Of(DataFolder folder) => Judge(Free(folder), new FileInfo(folder.DatabaseFile).Length);

    /// <summary>Bytes.</summary>
    public static long Free(DataFolder folder) => new DriveInfo(folder.Root).AvailableFreeSpace;

    /// <param name="free">Bytes.</param>
    /// <param name="database">Bytes; a backup needs as many.</param>
    public static DiskFilling? Judge(long free, long database) =>
        free < HardlyAny || free < database ? new DiskFilling(free, true)
        : free < Little || free < 3 * database ? new DiskFilling(free, false)
        : null;
}
