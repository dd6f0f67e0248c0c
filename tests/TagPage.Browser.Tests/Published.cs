namespace TagPage.Browser.Tests;

/// <summary>The program as "dotnet publish" leaves it, in a folder far from the source, started from yet another.</summary>
public sealed class Published : IDisposable
{
    private readonly string _root = Path.Combine(Path.GetTempPath(), "tagpage-published-" + Guid.NewGuid().ToString("N"));

    /// <summary>The build of these tests publishes the program beside them.</summary>
    public Published() => Copy(new DirectoryInfo(Path.Combine(AppContext.BaseDirectory, "published")), Directory.CreateDirectory(Path.Combine(_root, "program")));

    public string Seed => Path.Combine(_root, "program", "seed-demo");

    /// <summary>A folder that nothing is in yet.</summary>
    public string EmptyFolder() => Directory.CreateDirectory(Path.Combine(_root, Guid.NewGuid().ToString("N"))).FullName;

    public StartedProgram Start(string folder, params string[] arguments) =>
        StartedProgram.Start("dotnet", [Path.Combine(_root, "program", "TagPage.Web.dll"), .. arguments], folder);

    public void Dispose() => Directory.Delete(_root, recursive: true);

    private static void Copy(DirectoryInfo from, DirectoryInfo to)
    {
        foreach (var file in from.EnumerateFiles())
            file.CopyTo(Path.Combine(to.FullName, file.Name));
        foreach (var folder in from.EnumerateDirectories())
            Copy(folder, to.CreateSubdirectory(folder.Name));
    }

    /// <summary>The folder of the solution above these tests.</summary>
    public static string Source()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "TagPage.sln")))
            folder = folder.Parent!;
        return folder.FullName;
    }
}
