namespace TagPage.Web.Data;

/// <summary>The one folder under which everything that lives is kept: database, keys, copies, outgoing mail.</summary>
public sealed class DataFolder
{
    public DataFolder(string path)
    {
        Root = Path.GetFullPath(path);
        Directory.CreateDirectory(Root);
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(Root, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }

    public string Root { get; }

    public string DatabaseFile => Path.Combine(Root, "tagpage.db");

    public string Keys => Directory.CreateDirectory(Path.Combine(Root, "keys")).FullName;

    public string Uploads => Directory.CreateDirectory(Path.Combine(Root, "uploads")).FullName;

    public string Mail => Directory.CreateDirectory(Path.Combine(Root, "mail")).FullName;

    public string Copies => Directory.CreateDirectory(Path.Combine(Root, "copies")).FullName;
}
