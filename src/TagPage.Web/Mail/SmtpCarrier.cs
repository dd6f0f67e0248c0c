using MailKit.Net.Smtp;
using MailKit.Security;
using MimeKit;

namespace TagPage.Web.Mail;

/// <summary>Hands mails to the shop's SMTP server.</summary>
public sealed class SmtpCarrier(MailSettings settings, TimeProvider clock) : IMailCarrier
{
    private static readonly TimeSpan ForGoodbye = TimeSpan.FromSeconds(5);

    public async Task Carry(MimeMessage mail, CancellationToken cancel)
    {
        using var patience = new SmtpPatience(clock, cancel);
        using var client = new SmtpClient(patience) { Timeout = (int)SmtpPatience.ForTheMail.TotalMilliseconds };
        try
        {
            await HandOver(mail, client, patience);
        }
        catch (Exception e) when (patience.IsFateOpen)
        {
            throw new UnknownFateException("The mail server did not say whether it accepted the email.", e);
        }
        catch (OperationCanceledException e) when (!cancel.IsCancellationRequested)
        {
            throw new TimeoutException("The mail server took too long to answer.", e);
        }
        await SayGoodbye(client);
    }

    private async Task HandOver(MimeMessage mail, SmtpClient client, SmtpPatience patience)
    {
        await Enter(client, settings, patience.Token);
        await client.SendAsync(mail, patience.Token, patience);
    }

    /// <summary>Connects, and signs in where there is somebody to sign in as.</summary>
    internal static async Task Enter(SmtpClient client, MailSettings settings, CancellationToken cancel)
    {
        await client.ConnectAsync(settings.Host!, settings.Port, SecurityOf(settings), cancel);
        if (!string.IsNullOrEmpty(settings.User))
            await client.AuthenticateAsync(settings.User, settings.Password ?? "", cancel);
    }

    /// <summary>The server has accepted the email; an error while closing the connection must not send it again.</summary>
    private async Task SayGoodbye(SmtpClient client)
    {
        using var enough = new CancellationTokenSource(ForGoodbye, clock);
        try
        {
            await client.DisconnectAsync(true, enough.Token);
        }
        catch (Exception e) when (e is IOException or MailKit.ProtocolException or OperationCanceledException)
        {
        }
    }

    private static SecureSocketOptions SecurityOf(MailSettings settings) => settings.Tls switch
    {
        MailTls.None => SecureSocketOptions.None,
        MailTls.Auto => SecureSocketOptions.StartTlsWhenAvailable,
        _ => settings.Port == 465 ? SecureSocketOptions.SslOnConnect : SecureSocketOptions.StartTls,
    };
}
