namespace TagPage.Browser.Tests;

/// <summary>The program as "dotnet publish" leaves it, in a folder far from the source, started from yet another.</summary>
public sealed class Published : IAsyncLifetime
{
    private readonly string _root = Path.Combine(Path.GetTempPath(), "tagpage-published-" + Guid.NewGuid().ToString("N"));

    public string Seed => Path.Combine(_root, "program", "seed-demo");

    public async ValueTask InitializeAsync()
    {
        Directory.CreateDirectory(_root);
        // Helpers that a build leaves running would hold on to its output, and the analyzers have had their say before.
        using var publish = StartedProgram.Start("dotnet",
            [
                "publish", Path.Combine(Source(), "src", "TagPage.Web"), "-o", Path.Combine(_root, "program"), "--nologo", "-v", "quiet",
                "-nodeReuse:false", "-p:UseSharedCompilation=false", "-p:RunAnalyzers=false",
            ], _root);
        var (code, output, errors) = await publish.Ended();
        Assert.True(code == 0, output + errors);
    }

    /// <summary>A folder that nothing is in yet.</summary>
    public string EmptyFolder() => Directory.CreateDirectory(Path.Combine(_root, Guid.NewGuid().ToString("N"))).FullName;

    public StartedProgram Start(string folder, params string[] arguments) =>
        StartedProgram.Start("dotnet", [Path.Combine(_root, "program", "TagPage.Web.dll"), .. arguments], folder);

    public ValueTask DisposeAsync()
    {
        Directory.Delete(_root, recursive: true);
        return ValueTask.CompletedTask;
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
