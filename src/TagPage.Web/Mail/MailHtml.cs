using System.Text.RegularExpressions;
using TagPage.Web.Words;

namespace TagPage.Web.Mail;

/// <summary>A mail written in Markdown as a page of its own: no pictures, no styles, nothing that is fetched.</summary>
public static partial class MailHtml
{
    public static string Of(string markdown) =>
        $"<!DOCTYPE html>\n<html><head><meta charset=\"utf-8\"></head><body>\n{Body(markdown)}</body></html>\n";

    /// <summary>The same without the page around it. Line breaks stay, and an address that stands bare becomes a link.</summary>
    public static string Body(string markdown)
    {
        using var writer = new StringWriter();
        OwnersMarkdown.Render(BareAddress().Replace(markdown, "<$0>").Replace("\n", "  \n", StringComparison.Ordinal)).WriteTo(writer, System.Text.Encodings.Web.HtmlEncoder.Default);
        return writer.ToString();
    }

    [GeneratedRegex(@"(?<![(<\w])https?://[^\s<>()]+")]
    private static partial Regex BareAddress();
}
