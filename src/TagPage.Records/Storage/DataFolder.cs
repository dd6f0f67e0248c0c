namespace TagPage.Records.Storage;

/// <summary>The one folder in which everything is kept: database, keys, backups, outgoing email.</summary>
public sealed class DataFolder
{
    /// <exception cref="CannotStartException">The folder cannot be made, or not be written.</exception>
    public DataFolder(string path)
    {
        Root = Path.GetFullPath(path);
        try
        {
            Directory.CreateDirectory(Root);
            TryWriting();
            CloseToOthers(Root);
        }
        catch (Exception e) when (e is UnauthorizedAccessException or IOException)
        {
            throw new CannotStartException($"The data folder {Root} cannot be written; give it to this user, or name another with --TagPage:DataFolder=….");
        }
    }

    public string Root { get; }

    private const string Database = "tagpage.db", KeyFolder = "keys";

    /// <summary>Whether a folder holds anything of a shop, as it stands: nothing is made.</summary>
    public static bool HasShop(string path) =>
        new FileInfo(Path.Combine(path, Database)) is { Exists: true, Length: > 0 } || Directory.Exists(Path.Combine(path, KeyFolder)) && Directory.EnumerateFiles(Path.Combine(path, KeyFolder)).Any();

    public string DatabaseFile => Path.Combine(Root, Database);

    public string Keys => Directory.CreateDirectory(Path.Combine(Root, KeyFolder)).FullName;

    public string Uploads => Directory.CreateDirectory(Path.Combine(Root, "uploads")).FullName;

    public string Mail => Directory.CreateDirectory(Path.Combine(Root, "mail")).FullName;

    public string Backups => Directory.CreateDirectory(BackupsPath).FullName;

    /// <summary>Where they lie, whether or not the folder is there or can be made.</summary>
    public string BackupsPath => Path.Combine(Root, "backups");

    /// <summary>Removes other users' access to a folder or file, and grants nobody anything.</summary>
    public static void CloseToOthers(string path)
    {
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(path, File.GetUnixFileMode(path) & (UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute));
    }

    private void TryWriting()
    {
        using var probe = new FileStream(Path.Combine(Root, ".writing-" + Guid.NewGuid().ToString("N")), new FileStreamOptions
        {
            Mode = FileMode.CreateNew,
            Access = FileAccess.Write,
            Options = FileOptions.DeleteOnClose,
        });
    }
}
