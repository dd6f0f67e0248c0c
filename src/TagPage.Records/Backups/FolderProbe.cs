namespace TagPage.Records.Backups;

/// <summary>Whether a folder is there and takes a file.</summary>
public static class FolderProbe
{
    public static bool IsWritable(string folder)
    {
        try
        {
            using var probe = new FileStream(Path.Combine(folder, ".writing-" + Guid.NewGuid().ToString("N")), new FileStreamOptions
            {
                Mode = FileMode.CreateNew,
                Access = FileAccess.Write,
                Options = FileOptions.DeleteOnClose,
            });
            probe.WriteByte(0);
            probe.Flush();
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
