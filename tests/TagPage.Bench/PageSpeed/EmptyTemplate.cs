using System.Diagnostics;

namespace TagPage.Bench.PageSpeed;

/// <summary>What the SDK's template for Razor Pages makes, built for release.</summary>
public static class EmptyTemplate
{
    /// <returns>The path of its .dll.</returns>
    public static string Build(string folder)
    {
        Run("new", "webapp", "--output", folder, "--name", "Empty", "--no-https", "--no-restore");
        Run("build", folder, "--configuration", "Release", "--output", Path.Combine(folder, "out"), "--nologo", "--verbosity", "quiet");
        return Path.Combine(folder, "out", "Empty.dll");
    }

    private static void Run(params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo("dotnet", arguments) { RedirectStandardOutput = true, WorkingDirectory = Path.GetTempPath() })!;
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0)
            throw new InvalidOperationException($"dotnet {string.Join(' ', arguments)}: {output}");
    }
}
