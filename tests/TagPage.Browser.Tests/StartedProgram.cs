using System.Diagnostics;

namespace TagPage.Browser.Tests;

/// <summary>A process of its own, started as an owner would, and ended with the test.</summary>
public sealed class StartedProgram : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    private readonly Process _process;
    private readonly Task<string> _errors;

    private StartedProgram(Process process) => (_process, _errors) = (process, process.StandardError.ReadToEndAsync());

    public static StartedProgram Start(string file, IEnumerable<string> arguments, string folder)
    {
        var start = new ProcessStartInfo(file, arguments) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true };
        // Settings of the test run itself must not reach a build or a program that it starts.
        foreach (var name in start.Environment.Keys.Where(n => n.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase) || n.StartsWith("ASPNETCORE", StringComparison.Ordinal)).ToList())
            start.Environment.Remove(name);
        return new StartedProgram(Process.Start(start)!);
    }

    /// <summary>What it printed up to and with the first line that begins so.</summary>
    public async Task<IReadOnlyList<string>> LinesUpTo(string beginning)
    {
        var lines = new List<string>();
        while (await _process.StandardOutput.ReadLineAsync().WaitAsync(Patience) is { } line)
        {
            lines.Add(line);
            if (line.StartsWith(beginning, StringComparison.Ordinal))
                return lines;
        }
        throw new InvalidOperationException($"It ended without a line “{beginning}”: {string.Join('\n', lines)}\n{await _errors}");
    }

    /// <summary>Waits for the end: exit code, output, errors.</summary>
    public async Task<(int Code, string Output, string Errors)> Ended()
    {
        var output = await _process.StandardOutput.ReadToEndAsync().WaitAsync(Patience);
        await _process.WaitForExitAsync().WaitAsync(Patience);
        return (_process.ExitCode, output, await _errors);
    }

    public void Dispose()
    {
        if (!_process.HasExited)
            _process.Kill(entireProcessTree: true);
        _process.WaitForExit();
        _process.Dispose();
    }
}
