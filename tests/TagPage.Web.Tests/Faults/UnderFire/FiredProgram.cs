using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using TagPage.Records.Storage;
using TagPage.Web.Start.CommandLine;

namespace TagPage.Web.Tests.Faults.UnderFire;

/// <summary>The program as a process of its own, at one port for all its lives.</summary>
internal sealed class FiredProgram(DataFolder folder, int mailPort) : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private Process? _process;

    public int Port { get; } = FreePort();

    /// <summary>Starts it and waits until it can be visited.</summary>
    /// <returns>What it printed by then.</returns>
    public async Task<IReadOnlyList<string>> Start()
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in (string[])["exec", typeof(CommandLine).Assembly.Location, $"--TagPage:DataFolder={folder.Root}", $"--urls=http://127.0.0.1:{Port}",
            "--TagPage:Smtp:Host=127.0.0.1", $"--TagPage:Smtp:Port={mailPort}", "--TagPage:Smtp:Tls=None", "--Logging:LogLevel:Default=None"])
            start.ArgumentList.Add(argument);
        _process = Process.Start(start)!;
        var lines = new List<string>();
        while (await _process.StandardOutput.ReadLineAsync().WaitAsync(Patience) is { } line)
        {
            lines.Add(line);
            if (line.StartsWith("Records", StringComparison.Ordinal))
            {
                _ = _process.StandardOutput.ReadToEndAsync();
                _ = _process.StandardError.ReadToEndAsync();
                return lines;
            }
        }
        throw new InvalidOperationException("It ended: " + await _process.StandardError.ReadToEndAsync());
    }

    /// <summary>SIGKILL: nothing of it gets another instruction.</summary>
    public void Kill()
    {
        if (_process is null)
            return;
        if (!_process.HasExited)
            _process.Kill();
        _process.WaitForExit();
        _process.Dispose();
        _process = null;
    }

    public void Dispose() => Kill();

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
