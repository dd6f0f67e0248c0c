using System.Net.Sockets;
using MailKit;
using MailKit.Net.Smtp;
using MailKit.Security;

namespace TagPage.Web.Mail;

/// <summary>Whether the mail server lets the program in; nothing is sent.</summary>
public sealed class MailProbe(MailSettings settings, TimeProvider clock)
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(15);

    /// <returns>Why not, and what to look at; null where it does.</returns>
    public async Task<string?> WhyNot(CancellationToken cancel)
    {
        using var patience = new CancellationTokenSource(Patience, clock);
        using var enough = CancellationTokenSource.CreateLinkedTokenSource(patience.Token, cancel);
        using var client = new SmtpClient();
        try
        {
            await SmtpCarrier.Enter(client, settings, enough.Token);
            await client.DisconnectAsync(true, enough.Token);
            return null;
        }
        catch (Exception e) when (Sentence(e) is { } sentence && !cancel.IsCancellationRequested)
        {
            return sentence;
        }
    }

    private string? Sentence(Exception fault) => fault switch
    {
        AuthenticationException => $"{settings.Host} does not accept the mailbox and password. Check both where the program is started.",
        SslHandshakeException => $"The certificate of {settings.Host} is not trusted, or it offers no encryption on port {settings.Port}. Check host and port.",
        NotSupportedException => $"{settings.Host} offers no encryption on port {settings.Port}. Check the port: 587 and 465 are the usual ones.",
        SocketException { SocketErrorCode: SocketError.HostNotFound or SocketError.NoData or SocketError.TryAgain } =>
            $"The name {settings.Host} leads nowhere. Check how it is written, and that this machine is connected.",
        SocketException { SocketErrorCode: SocketError.ConnectionRefused } =>
            $"Nothing answers at {settings.Host} on port {settings.Port}. Check the port: 587 and 465 are the usual ones.",
        SocketException => $"This machine does not reach {settings.Host} on port {settings.Port}. Check its connection, and that no firewall is in the way.",
        OperationCanceledException or TimeoutException =>
            $"{settings.Host} did not answer on port {settings.Port} within {Patience.TotalSeconds:0} seconds. Check host and port, and that no firewall is in the way.",
        SmtpCommandException refused => $"{settings.Host} does not let the program in and says: “{refused.Message}”",
        ProtocolException or IOException => $"What answers at {settings.Host} on port {settings.Port} is not a mail server, or hung up. Check host and port.",
        _ => null,
    };
}
