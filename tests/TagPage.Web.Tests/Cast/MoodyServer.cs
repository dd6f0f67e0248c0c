using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;
using System.Text;
using MimeKit;

namespace TagPage.Web.Tests.Cast;

/// <summary>
/// A mail server on loopback, written by hand so that it can do at each stage what a good one does not: keep silent, hang
/// up, refuse, put off.
/// </summary>
public sealed class MoodyServer : IAsyncDisposable
{
    public const string Greeting = "GREETING", Mail = "MAIL", Rcpt = "RCPT", Data = "DATA", End = "END", Quit = "QUIT";

    /// <summary>Said instead of an answer, it ends the connection.</summary>
    public const string HangsUp = "";

    private readonly TcpListener _listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource _closing = new();
    private readonly ConcurrentQueue<Task> _visits = new();
    private readonly Task _running;

    public MoodyServer()
    {
        _listener.Start();
        _running = Listen();
    }

    public int Port => ((IPEndPoint)_listener.LocalEndpoint).Port;

    /// <summary>Emails received completely, whatever was answered then.</summary>
    public ConcurrentQueue<MimeMessage> Whole { get; } = new();

    /// <summary>The same, each with what was answered; null where the connection ended without a word, or before it came through.</summary>
    public ConcurrentQueue<(string? MessageId, string? Said)> Fates { get; } = new();

    /// <summary>How far its callers came, in that order.</summary>
    public ConcurrentQueue<string> Stages { get; } = new();

    /// <summary>What is said at a stage of a mail to an addressee; null for what a good server says.</summary>
    public Func<string, string, Task<string?>> Says { get; set; } = (_, _) => Task.FromResult<string?>(null);

    /// <summary>The same at one stage only.</summary>
    public void SaysAt(string stage, Func<Task<string?>> answer) => Says = (at, _) => at == stage ? answer() : Task.FromResult<string?>(null);

    /// <summary>No answer for as long as the server lives.</summary>
    public async Task<string?> Silence()
    {
        await Task.Delay(Timeout.Infinite, _closing.Token).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        return HangsUp;
    }

    public async ValueTask DisposeAsync()
    {
        await _closing.CancelAsync();
        await _running;
        _listener.Stop();
        await Task.WhenAll(_visits);
        _listener.Dispose();
        _closing.Dispose();
    }

    private async Task Listen()
    {
        try
        {
            while (true)
                _visits.Enqueue(Serve(await _listener.AcceptTcpClientAsync(_closing.Token)));
        }
        catch (Exception e) when (e is OperationCanceledException or SocketException or ObjectDisposedException)
        {
        }
    }

    private async Task Serve(TcpClient caller)
    {
        try
        {
            using (caller)
            {
                using var visit = new Visit(this, caller.GetStream());
                await visit.Run(_closing.Token);
            }
        }
        catch (Exception e) when (e is OperationCanceledException or IOException or SocketException)
        {
        }
    }

    private sealed class Visit(MoodyServer server, NetworkStream stream) : IDisposable
    {
        // One byte a character, so that nothing of the email is lost.
        private readonly StreamReader _reader = new(stream, Encoding.Latin1);
        private string _to = "";
        private string? _last;

        public async Task Run(CancellationToken cancel)
        {
            var stage = Greeting;
            while (await AnswerAndNote(stage, cancel) is { } said && stage != Quit)
            {
                if (said.StartsWith("354", StringComparison.Ordinal))
                {
                    var mail = await ReadMail(cancel);
                    _last = mail.MessageId;
                    server.Whole.Enqueue(mail);
                    stage = End;
                    continue;
                }
                if (await _reader.ReadLineAsync(cancel) is not { } line)
                    return;
                stage = line.Split(' ')[0].ToUpperInvariant();
                if (stage == Rcpt)
                    _to = line;
            }
        }

        public void Dispose() => _reader.Dispose();

        private async Task<string?> AnswerAndNote(string stage, CancellationToken cancel)
        {
            string? said = null;
            try
            {
                return said = await Answer(stage, cancel);
            }
            finally
            {
                if (stage == End)
                    server.Fates.Enqueue((_last, said));
            }
        }

        private async Task<string?> Answer(string stage, CancellationToken cancel)
        {
            server.Stages.Enqueue(stage);
            var said = await server.Says(stage, _to) ?? stage switch
            {
                Greeting => "220 moody.example",
                Data => "354 go ahead",
                Quit => "221 bye",
                _ => "250 fine",
            };
            if (said == HangsUp)
                return null;
            await stream.WriteAsync(Encoding.Latin1.GetBytes(said + "\r\n"), cancel);
            return said;
        }

        private async Task<MimeMessage> ReadMail(CancellationToken cancel)
        {
            var text = new StringBuilder();
            while (await _reader.ReadLineAsync(cancel) is { } line && line != ".")
                text.Append(line.StartsWith('.') ? line[1..] : line).Append("\r\n");
            using var bytes = new MemoryStream(Encoding.Latin1.GetBytes(text.ToString()));
            return await MimeMessage.LoadAsync(bytes, cancel);
        }
    }
}
