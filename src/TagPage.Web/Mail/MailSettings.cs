namespace TagPage.Web.Mail;

/// <summary>Settings TagPage:Smtp:*. Without a host, emails become .eml files in the data folder.</summary>
public sealed class MailSettings
{
    public string? Host { get; init; }

    public int Port { get; init; } = 587;

    public string? User { get; init; }

    public string? Password { get; init; }

    /// <summary>Auto (STARTTLS where the server offers it), Required, or None for a server on this machine.</summary>
    public MailTls Tls { get; init; } = MailTls.Required;

    public bool HasServer => !string.IsNullOrWhiteSpace(Host);
}

public enum MailTls { Required, Auto, None }
