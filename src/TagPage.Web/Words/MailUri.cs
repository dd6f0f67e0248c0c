namespace TagPage.Web.Words;

/// <summary>The address of a link that opens a mail (RFC 6068).</summary>
public static class MailUri
{
    public static string Of(string mail)
    {
        var at = mail.LastIndexOf('@');
        return $"mailto:{Uri.EscapeDataString(mail[..at])}@{Uri.EscapeDataString(mail[(at + 1)..])}";
    }
}
