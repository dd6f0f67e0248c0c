using MailKit.Net.Smtp;
using MailKit.Security;
using MimeKit;

namespace TagPage.Web.Mail;

/// <summary>Hands mails to the shop's SMTP server.</summary>
public sealed class SmtpCarrier(MailSettings settings) : IMailCarrier
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    public async Task Carry(MimeMessage mail, CancellationToken cancel)
    {
        using var client = new SmtpClient { Timeout = (int)Patience.TotalMilliseconds };
        await client.ConnectAsync(settings.Host!, settings.Port, Security, cancel);
        if (!string.IsNullOrEmpty(settings.User))
            await client.AuthenticateAsync(settings.User, settings.Password ?? "", cancel);
        await client.SendAsync(mail, cancel);
        // The server has taken the mail; a slip in saying goodbye must not send it again.
        try
        {
            await client.DisconnectAsync(true, CancellationToken.None);
        }
        catch (Exception e) when (e is IOException or MailKit.ProtocolException)
        {
        }
    }

    private SecureSocketOptions Security => settings.Tls switch
    {
        MailTls.None => SecureSocketOptions.None,
        MailTls.Auto => SecureSocketOptions.StartTlsWhenAvailable,
        _ => settings.Port == 465 ? SecureSocketOptions.SslOnConnect : SecureSocketOptions.StartTls,
    };
}
