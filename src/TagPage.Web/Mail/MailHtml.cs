using System.Text.Encodings.Web;
using TagPage.Records.Outbox;

namespace TagPage.Web.Mail;

/// <summary>An email as a page of its own: no styles, nothing that is fetched, and no picture but one that lies in the email itself.</summary>
public static class MailHtml
{
    /// <summary>A mail whose template is Markdown.</summary>
    /// <param name="text">What to write.</param>
    /// <param name="made">The address or the digits of a part that is made now.</param>
    public static string Of(MailText text, Func<MailPart, string> made) => Page(MailMarkdown.Html(text, made));

    /// <summary>A mail whose template is plain text: paragraphs and lines as they are, and no links but the parts that are.</summary>
    public static string OfPlain(MailText text, Func<MailPart, string> made)
    {
        var blocks = string.Concat(text.Parts.Select(p => Html(p, made))).Split("\n\n", StringSplitOptions.RemoveEmptyEntries).Select(b => b.Trim('\n', ' ')).Where(b => b.Length > 0);
        return Page(string.Join('\n', blocks.Select(b => b.StartsWith("<blockquote>", StringComparison.Ordinal) ? b : $"<p>{Lines(b)}</p>")));
    }

    /// <summary>With two paragraphs at its end, the second with a picture that goes along under that id.</summary>
    public static string With(string page, string words, string says, string contentId) =>
        page.Replace("</body>", $"<p>{Encoded(PlainMail.Unlinked(words))}</p>\n<p>{Encoded(says)}<br>\n<img src=\"cid:{Encoded(contentId)}\" alt=\"{Encoded(says)}\"></p>\n</body>", StringComparison.Ordinal);

    private static string Html(MailPart part, Func<MailPart, string> made) => part.Kind switch
    {
        PartKind.Words => Encoded(part.Text),
        PartKind.Typed => Encoded(PlainMail.Unlinked(part.Text)),
        PartKind.Quoted => $"\n\n<blockquote>{Lines(Encoded(PlainMail.Unlinked(part.Text)))}</blockquote>\n\n",
        PartKind.Link => $"<a href=\"{Encoded(made(part))}\">{Encoded(made(part))}</a>",
        _ => Encoded(made(part)),
    };

    /// <summary>Line breaks stay as they are until the text is split into blocks.</summary>
    private static string Encoded(string text) => HtmlEncoder.Default.Encode(text).Replace("&#xA;", "\n", StringComparison.Ordinal);

    private static string Lines(string encoded) => encoded.Replace("\n", "<br>\n", StringComparison.Ordinal);

    private static string Page(string body) =>
        $"<!DOCTYPE html>\n<html><head><meta charset=\"utf-8\"></head><body>\n{body}</body></html>\n";
}
