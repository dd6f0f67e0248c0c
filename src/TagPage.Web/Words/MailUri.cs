namespace TagPage.Web.Words;

/// <summary>The address of a link that opens a mail (RFC 6068).</summary>
public static class MailUri
{
    public static string Of(string mail)
    {
        var at = mail.LastIndexOf('@');
        return $"mailto:{Uri.EscapeDataString(mail[..at])}@{Uri.EscapeDataString(mail[(at + 1)..])}";
    }

    /// <summary>With its words; line breaks are %0D%0A (RFC 6068, section 5).</summary>
    public static string Of(string mail, string subject, string body) =>
        $"{Of(mail)}?subject={Uri.EscapeDataString(subject)}&body={Uri.EscapeDataString(body.ReplaceLineEndings("\r\n"))}";
}
