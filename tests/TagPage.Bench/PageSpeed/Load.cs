using System.Buffers.Text;
using System.Diagnostics;
using System.Net.Sockets;
using System.Text;

namespace TagPage.Bench.PageSpeed;

/// <summary>
/// A few connections that each send one request after another and read what comes back. It costs the machine as little as
/// it can, because it shares it with the server.
/// </summary>
public static class Load
{
    /// <param name="Count">Answers in all.</param>
    /// <param name="PerSecond">Answers a second over all connections.</param>
    /// <param name="MedianMs">Of all answers' times.</param>
    /// <param name="P95Ms">Not exceeded by 95 % of them.</param>
    public sealed record Result(int Count, double PerSecond, double MedianMs, double P95Ms);

    /// <param name="port">On this machine.</param>
    /// <param name="connections">At once.</param>
    /// <param name="time">How long.</param>
    /// <param name="path">Of the next request.</param>
    /// <param name="cookie">Sent along, if any.</param>
    /// <param name="most">Requests at most.</param>
    public static Result Drive(int port, int connections, TimeSpan time, Func<string> path, string? cookie = null, long most = long.MaxValue)
    {
        var (left, times, watch) = (most, new List<double>[connections], Stopwatch.StartNew());
        var threads = Enumerable.Range(0, connections).Select(n => new Thread(() => times[n] = One(port, time, watch, () => Interlocked.Decrement(ref left) >= 0 ? path() : null, cookie))).ToList();
        threads.ForEach(t => t.Start());
        threads.ForEach(t => t.Join());
        var seconds = watch.Elapsed.TotalSeconds;
        var all = times.SelectMany(t => t).Order().ToList();
        return new Result(all.Count, all.Count / seconds, all[all.Count / 2], all[all.Count * 95 / 100]);
    }

    private static List<double> One(int port, TimeSpan time, Stopwatch watch, Func<string?> path, string? cookie)
    {
        using var connection = new TcpClient("127.0.0.1", port) { NoDelay = true };
        var (stream, buffer, times) = (connection.GetStream(), new byte[4 * 1024 * 1024], new List<double>());
        while (watch.Elapsed < time && path() is { } next)
        {
            var began = Stopwatch.GetTimestamp();
            stream.Write(Encoding.ASCII.GetBytes(
                $"GET {next} HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nAccept-Encoding: gzip, br\r\nAccept-Language: en-GB,en;q=0.9\r\n{(cookie is null ? "" : $"Cookie: {cookie}\r\n")}\r\n"));
            Read(stream, buffer, next);
            times.Add(Stopwatch.GetElapsedTime(began).TotalMilliseconds);
        }
        return times;
    }

    /// <summary>
    /// Reads one answer whole. Only a 200, and a search that leads straight to what it found, are measured: anything else
    /// ends the run.
    /// </summary>
    private static void Read(NetworkStream stream, byte[] buffer, string path)
    {
        var (have, head) = (0, -1);
        while (head < 0)
        {
            have += More(stream, buffer, have);
            head = buffer.AsSpan(0, have).IndexOf("\r\n\r\n"u8);
        }
        var headers = buffer.AsSpan(0, head + 2);
        if (!headers.StartsWith("HTTP/1.1 200"u8) && headers.IndexOf("\r\nLocation: /shop/"u8) < 0)
            throw new InvalidOperationException($"{path}: {Encoding.ASCII.GetString(headers)}");
        if (Length(headers) is { } length)
        {
            while (have < head + 4 + length)
                have += More(stream, buffer, have);
        }
        else
        {
            while (!buffer.AsSpan(0, have).EndsWith("\r\n0\r\n\r\n"u8))
                have += More(stream, buffer, have);
        }
    }

    private static int More(NetworkStream stream, byte[] buffer, int have)
    {
        var read = stream.Read(buffer, have, buffer.Length - have);
        return read > 0 ? read : throw new InvalidOperationException("The server closed the connection, or its answer is larger than the buffer.");
    }

    private static int? Length(ReadOnlySpan<byte> headers)
    {
        var at = headers.IndexOf("Content-Length: "u8);
        return at >= 0 && Utf8Parser.TryParse(headers[(at + 16)..], out int length, out _) ? length : null;
    }
}
