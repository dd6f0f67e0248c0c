namespace TagPage.Web.Tests.Cast;

/// <summary>The folder the solution stands in.</summary>
public static class Repository
{
    public static string Folder { get; } = Find();

    /// <summary>Paths from there of what people wrote, without what builds made of it.</summary>
    public static IEnumerable<string> Files(string folder, string pattern) => Directory
        .EnumerateFiles(Path.Combine(Folder, folder), pattern, SearchOption.AllDirectories)
        .Select(file => Path.GetRelativePath(Folder, file))
        .Where(path => !path.Split('/', '\\').Any(part => part is "bin" or "obj"));

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "TagPage.sln")))
            folder = folder.Parent!;
        return folder.FullName;
    }
}
