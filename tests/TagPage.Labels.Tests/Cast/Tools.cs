using System.Diagnostics;

namespace TagPage.Labels.Tests.Cast;

/// <summary>Programs that judge from outside: poppler draws PDFs, Chromium draws SVGs. A test without its judge says that it was skipped.</summary>
internal static class Tools
{
    private static readonly string[] Browsers = ["chromium-headless-shell", "chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

    public static string Poppler(string program) => Find(program) ?? Skip($"{program} (poppler-utils)");

    public static string Chromium() =>
        Environment.GetEnvironmentVariable("CHROMIUM") ?? Browsers.Select(Find).FirstOrDefault(path => path is not null) ?? Skip("Chromium");

    public static string Run(string program, string folder, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        Assert.True(process.WaitForExit(TimeSpan.FromMinutes(3)), $"{program} hangs");
        Assert.True(process.ExitCode == 0, $"{program}: {error.Result}");
        return output;
    }

    public static T InFolder<T>(Func<string, T> work)
    {
        var folder = Directory.CreateTempSubdirectory("tagpage-labels-").FullName;
        try
        {
            return work(folder);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static string? Find(string program) => (Environment.GetEnvironmentVariable("PATH") ?? "")
        .Split(Path.PathSeparator).Select(folder => Path.Combine(folder, program)).FirstOrDefault(File.Exists);

    private static string Skip(string what)
    {
        Assert.Skip($"There is no {what} here, so this was not tested. bash tests/run.sh installs it, or says how.");
        return "";
    }
}
