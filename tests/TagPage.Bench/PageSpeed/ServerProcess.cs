using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace TagPage.Bench.PageSpeed;

/// <summary>A web server in a process of its own on a free port of this machine, ended with the run.</summary>
public sealed class ServerProcess : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private readonly Process _process;

    private ServerProcess(string name, Process process, int port, TimeSpan firstAnswer) => (Name, _process, Port, FirstAnswer) = (name, process, port, firstAnswer);

    public string Name { get; }

    public int Port { get; }

    /// <summary>From the start of the process to its first 200.</summary>
    public TimeSpan FirstAnswer { get; }

    /// <summary>Megabytes the process holds in memory now.</summary>
    public double Megabytes
    {
        get
        {
            _process.Refresh();
            return _process.WorkingSet64 / 1e6;
        }
    }

    /// <summary>Drives it, and tells what an answer cost it in processor time, whatever else the machine does.</summary>
    public (Load.Result Answers, double ProcessorMs) Drive(int connections, TimeSpan time, Func<string> path, string? cookie = null)
    {
        _process.Refresh();
        var before = _process.TotalProcessorTime;
        var answers = Load.Drive(Port, connections, time, path, cookie);
        _process.Refresh();
        return (answers, (_process.TotalProcessorTime - before).TotalMilliseconds / answers.Count);
    }

    /// <param name="name">For the report.</param>
    /// <param name="library">The program's .dll.</param>
    /// <param name="arguments">Its arguments; where it listens is added.</param>
    /// <param name="path">Answered with 200 as soon as it is ready.</param>
    public static async Task<ServerProcess> Start(string name, string library, IEnumerable<string> arguments, string path)
    {
        var port = FreePort();
        var start = new ProcessStartInfo("dotnet", [library, .. arguments, $"--urls=http://127.0.0.1:{port}"])
        {
            RedirectStandardOutput = true,
            WorkingDirectory = Path.GetDirectoryName(library)!,
            Environment = { ["ASPNETCORE_ENVIRONMENT"] = "Production" },
        };
        var watch = Stopwatch.StartNew();
        var process = Process.Start(start)!;
        _ = process.StandardOutput.ReadToEndAsync();
        try
        {
            await Answers(process, new Uri($"http://127.0.0.1:{port}{path}"), watch);
        }
        catch
        {
            process.Kill();
            throw;
        }
        return new ServerProcess(name, process, port, watch.Elapsed);
    }

    public void Dispose()
    {
        if (!_process.HasExited)
            _process.Kill();
        _process.WaitForExit();
        _process.Dispose();
    }

    private static async Task Answers(Process process, Uri address, Stopwatch watch)
    {
        using var client = new HttpClient();
        while (watch.Elapsed < Patience && !process.HasExited)
        {
            try
            {
                if ((await client.GetAsync(address)).IsSuccessStatusCode)
                    return;
            }
            catch (HttpRequestException)
            {
                await Task.Delay(5);
            }
        }
        throw new InvalidOperationException($"{address} did not answer with 200.");
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
