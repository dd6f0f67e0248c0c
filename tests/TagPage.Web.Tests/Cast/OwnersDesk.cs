using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using TagPage.Web.Start.CommandLine;

namespace TagPage.Web.Tests.Cast;

/// <summary>The owner's machine: a shop's data folder named "data" in a folder of its own, a terminal, and the program at hand.</summary>
public sealed class OwnersDesk : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private TestShop? _running;

    public string Place { get; } = Directory.CreateTempSubdirectory("tagpage-desk-").FullName;

    public string Data => Path.Combine(Place, "data");

    public string Database => Path.Combine(Data, "tagpage.db");

    /// <summary>The shop on the data folder; started, where it does not run yet.</summary>
    public TestShop Start()
    {
        if (_running is not null)
            return _running;
        _running = new TestShop { Folder = Data };
        _ = _running.House.Server;
        // Its last deed at a start, done beside the test.
        if (_running.Records.Count("account") == 0)
            WaitFor(() => _running.Output.ToString().Contains("Set up", StringComparison.Ordinal));
        return _running;
    }

    /// <summary>Returns when the database is closed, which folds its log into it, and the folder is free for the next.</summary>
    public void Stop()
    {
        if (_running is null)
            return;
        _running.Dispose();
        _running = null;
        WaitFor(() => !File.Exists(Database + "-wal") && IsFree(Path.Combine(Data, "tagpage.lock")));
    }

    private static bool IsFree(string lockFile)
    {
        try
        {
            File.Open(lockFile, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None).Dispose();
            return true;
        }
        catch (IOException)
        {
            return false;
        }
    }

    private static void WaitFor(Func<bool> condition) => Assert.True(SpinWait.SpinUntil(condition, Patience));

    /// <summary>The program with these arguments on the data folder, in this process.</summary>
    public async Task<(int Code, string Output, string Errors)> Ask(params string[] arguments)
    {
        var (output, errors) = (new StringWriter(), new StringWriter());
        var code = await CommandLine.Run([.. arguments, "--TagPage:DataFolder=" + Data, "--applicationName=TagPage.Web"], output, errors);
        return (code, output.ToString(), errors.ToString());
    }

    /// <summary>Lines of a terminal, in order, each of which has to go well; what they printed.</summary>
    public async Task<string> Type(string lines)
    {
        var start = new ProcessStartInfo("sh", ["-e", "-c", lines]) { WorkingDirectory = Place, RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["PATH"] = AppContext.BaseDirectory + Path.PathSeparator + Environment.GetEnvironmentVariable("PATH");
        start.Environment["DOTNET_ROOT"] = Path.GetFullPath(Path.Combine(RuntimeEnvironment.GetRuntimeDirectory(), "..", "..", ".."));
        using var terminal = Process.Start(start)!;
        var errors = terminal.StandardError.ReadToEndAsync();
        var output = await terminal.StandardOutput.ReadToEndAsync().WaitAsync(Patience);
        await terminal.WaitForExitAsync().WaitAsync(Patience);
        Assert.True(terminal.ExitCode == 0, $"{lines}\n{output}\n{await errors}");
        return output;
    }

    /// <summary>Every file of the data folder with what is in it.</summary>
    public IReadOnlyList<string> Files() =>
        [.. Directory.EnumerateFiles(Data, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .Select(f => Path.GetRelativePath(Data, f) + " " + (new FileInfo(f).Length == 0 ? "empty" : Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(f)))))];

    public void Dispose()
    {
        Stop();
        Directory.Delete(Place, recursive: true);
    }
}
