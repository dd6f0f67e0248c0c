using Markdig;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using Microsoft.AspNetCore.Html;

namespace TagPage.Web.Words;

/// <summary>
/// Markdown written by the owner, as safe HTML below a page's own heading: no raw HTML, no images, links only to web,
/// mail and telephone addresses and to this site's own pages. What is refused stays as its words.
/// </summary>
public static class OwnersMarkdown
{
    private const int DeepestHeading = 6;

    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().DisableHtml().Build();

    private static readonly string[] Schemes = ["http", "https", "mailto", "tel"];

    public static IHtmlContent Render(string markdown) => new HtmlString(Write(Read(markdown)));

    /// <summary>Parsed, and without what is refused.</summary>
    internal static MarkdownDocument Read(string markdown)
    {
        var document = Markdown.Parse(markdown, Pipeline);
        foreach (var link in document.Descendants<LinkInline>().ToList())
            Judge(link);
        foreach (var link in document.Descendants<AutolinkInline>().ToList())
            if (!link.IsEmail && !IsAllowed(link.Url))
                link.ReplaceBy(new LiteralInline(link.Url));
        Nest(document.Descendants<HeadingBlock>().ToList());
        return document;
    }

    internal static string Write(MarkdownDocument document) => document.ToHtml(Pipeline);

    private static void Judge(LinkInline link)
    {
        link.Url = link.GetDynamicUrl?.Invoke() ?? link.Url;
        link.GetDynamicUrl = null;
        if (link.IsImage || !IsAllowed(link.Url))
            link.ReplaceBy(new ContainerInline());
    }

    /// <summary>An address with a scheme on the list, or one without any that stays on this site.</summary>
    private static bool IsAllowed(string? address)
    {
        if (string.IsNullOrEmpty(address) || address.Any(c => char.IsControl(c) || char.IsWhiteSpace(c) || c == '\\'))
            return false;
        var colon = address.IndexOf(':', StringComparison.Ordinal);
        var end = address.IndexOfAny(['/', '?', '#']);
        return colon >= 0 && (end < 0 || colon < end)
            ? Schemes.Contains(address[..colon], StringComparer.OrdinalIgnoreCase)
            : !address.StartsWith("//", StringComparison.Ordinal);
    }

    /// <summary>Headings begin under the page's own and never skip a level on the way down.</summary>
    private static void Nest(List<HeadingBlock> headings)
    {
        if (headings.Count == 0)
            return;
        var (highest, above) = (headings.Min(h => h.Level), 1);
        foreach (var heading in headings)
            above = heading.Level = Math.Min(DeepestHeading, Math.Min(heading.Level - highest + 2, above + 1));
    }
}
