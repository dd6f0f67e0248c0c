namespace TagPage.Web.Tests.Cast;

/// <summary>The folder the solution stands in.</summary>
public static class Repository
{
    public static string Folder { get; } = Find();

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "TagPage.sln")))
            folder = folder.Parent!;
        return folder.FullName;
    }
}
