using System.Text.RegularExpressions;
using Markdig;
using Microsoft.AspNetCore.Html;

namespace TagPage.Web.Words;

/// <summary>The manual: the Markdown files of docs/ that travel with the program.</summary>
public sealed partial class Manual
{
    public const string First = "start";

    /// <summary>In the order a new owner needs them.</summary>
    private static readonly string[] Order =
        [First, "first-visit", "job", "money", "stock", "tags", "labels", "events", "lost-and-found", "restring-by", "customising", "reminders", "own-page", "care", "moving-in", "settings", "mail", "sign-in", "people", "publish", "bad-day", "trust", "data", "licences"];

    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().UseAutoIdentifiers().Build();

    private readonly Dictionary<string, ManualPage> _pages;

    public Manual()
    {
        _pages = Order.Select(Read).ToDictionary(p => p.Name);
        Contents = [.. Order.Select(n => (n, _pages[n].Title))];
    }

    public IReadOnlyList<(string Name, string Title)> Contents { get; }

    public ManualPage? Find(string name) => _pages.GetValueOrDefault(name);

    private static ManualPage Read(string name)
    {
        var text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "docs", name + ".md"));
        var end = text.IndexOf('\n', StringComparison.Ordinal);
        var html = BetweenPages().Replace(Markdown.ToHtml(text[end..], Pipeline), "href=\"/shop/help/$1\"");
        return new ManualPage(name, text[..end].TrimStart('#', ' '), new HtmlString(WideTables(InNames().Replace(html, "_<wbr>"))));
    }

    /// <summary>A table too wide for a phone scrolls in a box of its own, also by keyboard.</summary>
    private static string WideTables(string html) => html
        .Replace("<table>", "<div class=\"wide-table\" tabindex=\"0\" role=\"group\" aria-label=\"Table\"><table>", StringComparison.Ordinal)
        .Replace("</table>", "</table></div>", StringComparison.Ordinal);

    /// <summary>Pages link to each other by file name, so that they also work where the files are read as files.</summary>
    [GeneratedRegex("href=\"([a-z-]+)\\.md\"")]
    private static partial Regex BetweenPages();

    /// <summary>Long table names may wrap on a phone, but only between their words.</summary>
    [GeneratedRegex("(?<=<code>[a-z_]*)_")]
    private static partial Regex InNames();
}

public sealed record ManualPage(string Name, string Title, HtmlString Html);
