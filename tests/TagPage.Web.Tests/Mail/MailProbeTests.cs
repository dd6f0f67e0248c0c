using System.Net;
using System.Net.Sockets;
using Microsoft.Extensions.Time.Testing;
using TagPage.Web.Mail;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Mail;

/// <summary>What stands between the program and the mail server is told for what it is.</summary>
public sealed class MailProbeTests
{
    private static CancellationToken Token => TestContext.Current.CancellationToken;

    private readonly FakeTimeProvider _clock = new();

    [Fact]
    public async Task Server_that_lets_the_program_in_is_well()
    {
        await using var server = new MoodyServer();
        Assert.Null(await WhyNot("127.0.0.1", server.Port));
    }

    [Fact]
    public async Task Port_at_which_nothing_listens()
    {
        var free = new TcpListener(IPAddress.Loopback, 0);
        free.Start();
        var port = ((IPEndPoint)free.LocalEndpoint).Port;
        free.Stop();

        Assert.StartsWith($"Nothing answers at 127.0.0.1 on port {port}.", await WhyNot("127.0.0.1", port), StringComparison.Ordinal);
    }

    // RFC 6761, 6.4: names under .invalid never resolve.
    [Fact]
    public async Task Name_that_does_not_exist() =>
        Assert.StartsWith("The name mail.invalid leads nowhere.", await WhyNot("mail.invalid", 587), StringComparison.Ordinal);

    [Fact]
    public async Task Server_that_never_says_a_word()
    {
        var silent = new TcpListener(IPAddress.Loopback, 0);
        silent.Start();
        var asked = WhyNot("127.0.0.1", ((IPEndPoint)silent.LocalEndpoint).Port);
        using var visitor = await silent.AcceptTcpClientAsync(Token);

        _clock.Advance(TimeSpan.FromSeconds(15));

        Assert.Contains("did not answer on port", await asked, StringComparison.Ordinal);
        silent.Stop();
    }

    [Fact]
    public async Task Server_of_another_kind()
    {
        var other = new TcpListener(IPAddress.Loopback, 0);
        other.Start();
        var asked = WhyNot("127.0.0.1", ((IPEndPoint)other.LocalEndpoint).Port);
        using (var visitor = await other.AcceptTcpClientAsync(Token))
            await visitor.GetStream().WriteAsync("HTTP/1.1 400 Bad Request\r\n\r\n"u8.ToArray(), Token);

        Assert.Contains("is not a mail server, or hung up", await asked, StringComparison.Ordinal);
        other.Stop();
    }

    [Fact]
    public async Task Server_that_turns_the_program_away_is_quoted()
    {
        await using var server = new MoodyServer();
        server.SaysAt(MoodyServer.Greeting, () => Task.FromResult<string?>("554 Not from your network"));

        Assert.Contains("says: “Not from your network”", await WhyNot("127.0.0.1", server.Port), StringComparison.Ordinal);
    }

    private Task<string?> WhyNot(string host, int port) => new MailProbe(new MailSettings { Host = host, Port = port, Tls = MailTls.None }, _clock).WhyNot(Token);
}
