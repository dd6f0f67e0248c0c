using MailKit;
using MailKit.Net.Smtp;
using MailKit.Security;

namespace TagPage.Web.Mail;

/// <summary>Whether the mail server lets the program in; nothing is sent.</summary>
public sealed class MailProbe(MailSettings settings)
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(15);

    /// <returns>Why not, as a sentence; null where it does.</returns>
    public async Task<string?> WhyNot(CancellationToken cancel)
    {
        using var enough = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        enough.CancelAfter(Patience);
        using var client = new SmtpClient();
        try
        {
            await SmtpCarrier.Enter(client, settings, enough.Token);
            await client.DisconnectAsync(true, enough.Token);
            return null;
        }
        catch (AuthenticationException)
        {
            return "it does not accept the mailbox and password.";
        }
        catch (SslHandshakeException)
        {
            return "its certificate is not trusted, or it offers no encryption on this port.";
        }
        catch (NotSupportedException)
        {
            return "it offers no encryption on this port.";
        }
        catch (Exception e) when (e is System.Net.Sockets.SocketException or IOException or TimeoutException or OperationCanceledException or ProtocolException or CommandException)
        {
            return "what answers there is not a mail server.";
        }
    }
}
