using System.Buffers;
using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;
using MimeKit;
using SmtpServer;
using SmtpServer.ComponentModel;
using SmtpServer.Protocol;
using SmtpServer.Storage;
using SmtpResponse = SmtpServer.Protocol.SmtpResponse;

namespace TagPage.Web.Tests.Cast;

/// <summary>A real SMTP server on loopback that keeps what it is given, and can refuse, dawdle, or be cut off.</summary>
public sealed class PostOffice : MessageStore, IAsyncDisposable
{
    private static readonly ConcurrentBag<PostOffice> Idle = [];

    private readonly CancellationTokenSource _closing = new();
    private readonly Task _running;

    /// <summary>An unused one, if there is one: shops with the same post office can use the same house.</summary>
    public static PostOffice Open() => Idle.TryTake(out var idle) ? idle : new PostOffice();

    private PostOffice()
    {
        using (var probe = new TcpListener(IPAddress.Loopback, 0))
        {
            probe.Start();
            Port = ((IPEndPoint)probe.LocalEndpoint).Port;
        }
        var options = new SmtpServerOptionsBuilder()
            .ServerName("localhost")
            .Endpoint(b => b.Endpoint(new IPEndPoint(IPAddress.Loopback, Port)))
            .Build();
        var services = new ServiceProvider();
        services.Add(this);
        _running = new SmtpServer.SmtpServer(options, services).StartAsync(_closing.Token);
    }

    public int Port { get; }

    public ConcurrentQueue<MimeMessage> Received { get; } = new();

    /// <summary>What the server answers to the next emails; it accepts them if nothing is set.</summary>
    public Func<SmtpResponse> Answer { get; set; } = () => SmtpResponse.Ok;

    /// <summary>Runs after the email was accepted and before the server says so.</summary>
    public Func<Task> BeforeAnswer { get; set; } = () => Task.CompletedTask;

    public override async Task<SmtpResponse> SaveAsync(
        ISessionContext context, IMessageTransaction transaction, ReadOnlySequence<byte> buffer, CancellationToken cancellationToken)
    {
        var answer = Answer();
        if (answer.ReplyCode == SmtpReplyCode.Ok)
        {
            using var stream = new MemoryStream(buffer.ToArray());
            Received.Enqueue(await MimeMessage.LoadAsync(stream, cancellationToken));
        }
        await BeforeAnswer();
        return answer;
    }

    /// <summary>Nobody answers at the port any more.</summary>
    public async Task Close()
    {
        await _closing.CancelAsync();
        try
        {
            await _running;
        }
        catch (OperationCanceledException)
        {
        }
    }

    /// <summary>Forgets everything and waits for the next test, unless it was closed.</summary>
    public ValueTask DisposeAsync()
    {
        if (_closing.IsCancellationRequested)
        {
            _closing.Dispose();
            return ValueTask.CompletedTask;
        }
        Received.Clear();
        (Answer, BeforeAnswer) = (() => SmtpResponse.Ok, () => Task.CompletedTask);
        Idle.Add(this);
        return ValueTask.CompletedTask;
    }
}
