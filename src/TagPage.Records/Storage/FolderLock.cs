namespace TagPage.Records.Storage;

/// <summary>
/// Held by the one program that serves a data folder: two would send each mail twice. The operating system keeps it and
/// lets go of it when the process ends, however it ends; the file that stays behind means nothing.
/// </summary>
public sealed class FolderLock(DataFolder folder) : IDisposable
{
    private FileStream? _held;

    /// <exception cref="CannotStartException">Another program serves the folder.</exception>
    public void Take()
    {
        try
        {
            _held = new FileStream(Path.Combine(folder.Root, "tagpage.lock"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException e) when (IsTaken(e))
        {
            throw new CannotStartException($"Another TagPage is already running on {folder.Root}. Stop that one first, or name another folder: --TagPage:DataFolder=…");
        }
    }

    public void Dispose() => _held?.Dispose();

    /// <summary>ERROR_SHARING_VIOLATION of Windows; EWOULDBLOCK of flock on Linux and on macOS.</summary>
    private static bool IsTaken(IOException fault) => fault.HResult is unchecked((int)0x80070020) or 11 or 35;
}
