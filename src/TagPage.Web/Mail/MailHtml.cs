using System.Text.RegularExpressions;
using TagPage.Web.Words;

namespace TagPage.Web.Mail;

/// <summary>A mail written in Markdown as a page of its own: no pictures, no styles, nothing that is fetched.</summary>
public static partial class MailHtml
{
    public static string Of(string markdown) => Page(Body(markdown));

    /// <summary>The same without the page around it. Line breaks stay, and an address that stands bare becomes a link.</summary>
    public static string Body(string markdown)
    {
        using var writer = new StringWriter();
        OwnersMarkdown.Render(BareAddress().Replace(markdown, "<$0>").Replace("\n", "  \n", StringComparison.Ordinal)).WriteTo(writer, System.Text.Encodings.Web.HtmlEncoder.Default);
        return writer.ToString();
    }

    /// <summary>Plain text as a page: paragraphs and lines as they are, and links of this shop's own address alone.</summary>
    public static string OfText(string text, string ownAddress)
    {
        var encoded = System.Text.Encodings.Web.HtmlEncoder.Default.Encode(text.ReplaceLineEndings("\n")).Replace("&#xA;", "\n", StringComparison.Ordinal);
        var linked = Regex.Replace(encoded, Regex.Escape(ownAddress) + @"/[\w/-]+", link => $"<a href=\"{link.Value}\">{link.Value}</a>");
        var paragraphs = linked.Split("\n\n", StringSplitOptions.RemoveEmptyEntries).Select(p => $"<p>{p.Trim().Replace("\n", "<br>\n", StringComparison.Ordinal)}</p>");
        return Page(string.Join('\n', paragraphs));
    }

    private static string Page(string body) =>
        $"<!DOCTYPE html>\n<html><head><meta charset=\"utf-8\"></head><body>\n{body}</body></html>\n";

    [GeneratedRegex(@"(?<![(<\w])https?://[^\s<>()]+")]
    private static partial Regex BareAddress();
}
