using System.Diagnostics;
using TagPage.Web.Start.CommandLine;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Cli;

/// <summary>Real processes on one data folder.</summary>
[Long]
public sealed class OneProgramTests : IDisposable
{
    private readonly string _folder = Path.Combine(Path.GetTempPath(), "tagpage-test-" + Guid.NewGuid().ToString("N"));
    private readonly List<Process> _started = [];

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    public void Dispose()
    {
        foreach (var process in _started)
        {
            process.Kill();
            process.WaitForExit();
            process.Dispose();
        }
        Directory.Delete(_folder, recursive: true);
    }

    [Theory]
    [InlineData]
    [InlineData("demo")]
    public async Task Second_program_on_a_data_folder_is_refused_in_a_sentence_until_the_first_is_gone_however_it_went(params string[] command)
    {
        var first = Start(command);
        await Prints(first, "Shop");

        var second = Start();
        await second.WaitForExitAsync(Token).WaitAsync(TimeSpan.FromSeconds(30), Token);
        Assert.Equal(1, second.ExitCode);
        Assert.Equal($"Another TagPage is already running on {_folder}. Stop that one first, or name another folder: --TagPage:DataFolder=…", (await second.StandardError.ReadToEndAsync(Token)).Trim());

        first.Kill();
        await first.WaitForExitAsync(Token);
        await Prints(Start(command), "Shop");
    }

    [Fact]
    public async Task Set_up_link_is_printed_beside_the_running_program()
    {
        await Prints(Start(), "Records");

        var link = Start("set-up-link");

        await Prints(link, "/account/set-up/");
        await link.WaitForExitAsync(Token).WaitAsync(TimeSpan.FromSeconds(30), Token);
        Assert.Equal(0, link.ExitCode);
    }

    private Process Start(params string[] command)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        string[] settings = [$"--TagPage:DataFolder={_folder}", "--urls=http://127.0.0.1:0"];
        foreach (var argument in (string[])["exec", typeof(CommandLine).Assembly.Location, .. command, .. settings])
            start.ArgumentList.Add(argument);
        var process = Process.Start(start)!;
        _started.Add(process);
        return process;
    }

    private static async Task Prints(Process process, string words)
    {
        while (await process.StandardOutput.ReadLineAsync(Token).AsTask().WaitAsync(TimeSpan.FromSeconds(30), Token) is { } line)
        {
            if (line.Contains(words, StringComparison.Ordinal))
                return;
        }
        Assert.Fail($"It ended without “{words}”: {await process.StandardError.ReadToEndAsync(Token)}");
    }
}
