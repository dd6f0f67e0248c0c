using System.Text.Encodings.Web;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using CsCheck;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Words;

public sealed class OwnersMarkdownTests
{
    /// <summary>What an address may be once resolved; an empty one is broken and leads nowhere.</summary>
    private static readonly string[] Schemes = ["http:", "https:", "mailto:", "tel:", ""];

    private static readonly string[] Attributes = ["href", "title", "class", "start"];

    private static readonly string[] Pieces =
    [
        "[", "]", "(", ")", "<", ">", "!", "\"", "'", "\\", "&colon;", "&#x6A;", "javascript:", "data:", "//", "/",
        "http://a.example", "x", " ", "\n", "\t", "*", "`",
        "#", "[x]: ", "onload=", "script", "\0",
    ];

    // The kinds of input are those of OWASP's cross-site scripting prevention notes and of CommonMark's link syntax.
    [Theory]
    [InlineData("[x](javascript:alert(1))")]
    [InlineData("[x](JaVaScRiPt:alert(1))")]
    [InlineData("[x](<java\tscript:alert(1)>)")]
    [InlineData("[x](<  javascript:alert(1)>)")]
    [InlineData("[x](\u0001javascript:alert(1))")]
    [InlineData("[x](javascript&#58;alert(1))")]
    [InlineData("[x](&#106;avascript&colon;alert(1))")]
    [InlineData("[x](javascript\\:alert(1))")]
    [InlineData("[x](vbscript:msgbox)")]
    [InlineData("[x](data:text/html;base64,PHNjcmlwdD4=)")]
    [InlineData("[x](file:///etc/passwd)")]
    [InlineData("[x](//evil.example)")]
    [InlineData("[x](\\\\evil.example)")]
    [InlineData("[x](/\\evil.example)")]
    [InlineData("[x][r]\n\n[r]: javascript:alert(1)")]
    [InlineData("[x]\n\n[x]: data:text/html,hi 'title'")]
    [InlineData("<javascript:alert(1)>")]
    [InlineData("<data:text/html,hi>")]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("<a href='javascript:alert(1)'>x</a>")]
    [InlineData("a <img src=x onerror=alert(1)> b")]
    [InlineData("<svg/onload=alert(1)>")]
    [InlineData("![x](https://remote.example/track.png)")]
    [InlineData("![x](/local.png)")]
    [InlineData("![x](data:image/png;base64,AAAA)")]
    [InlineData("[![x](https://remote.example/a.png)](javascript:alert(1))")]
    [InlineData("![x][r]\n\n[r]: https://remote.example/track.png")]
    public void Hostile_text_becomes_neither_link_nor_picture_nor_markup(string markdown)
    {
        var html = Parse(markdown);

        Assert.Empty(html.QuerySelectorAll("a, img, script, svg"));
        Assert.NotEmpty(html.TextContent.Trim());
    }

    [Theory]
    [InlineData("[x](https://a.example/b?c=d#e)", "https://a.example/b?c=d#e")]
    [InlineData("[x](HTTP://a.example)", "HTTP://a.example")]
    [InlineData("[x](mailto:a@b.example)", "mailto:a@b.example")]
    [InlineData("[x](tel:+442079460182)", "tel:+442079460182")]
    [InlineData("[x](/t)", "/t")]
    [InlineData("[x](t?a=b:c)", "t?a=b:c")]
    [InlineData("[x](#prices)", "#prices")]
    [InlineData("[x][r]\n\n[r]: https://a.example", "https://a.example")]
    [InlineData("<https://a.example>", "https://a.example")]
    [InlineData("<a@b.example>", "mailto:a@b.example")]
    public void Decent_links_stay(string markdown, string address) =>
        Assert.Equal(address, Assert.Single(Parse(markdown).QuerySelectorAll("a")).GetAttribute("href"));

    [Fact]
    public void Words_of_a_refused_link_stay_as_they_are_written() =>
        Assert.Equal("<p>See <em>my</em> list.</p>\n", Write("See [*my* list](javascript:alert(1))."));

    [Theory]
    [InlineData("# A\n## B\n# C", "H2 H3 H2")]
    [InlineData("## A\n### B", "H2 H3")]
    [InlineData("# A\n#### B\n#### C", "H2 H3 H4")]
    [InlineData("### A\n# B", "H2 H2")]
    [InlineData("# A\n## B\n### C\n#### D\n##### E\n###### F", "H2 H3 H4 H5 H6 H6")]
    [InlineData("A\n===\n\nB\n---", "H2 H3")]
    public void Headings_begin_below_the_pages_own_and_skip_no_level(string markdown, string levels)
    {
        var found = Parse(markdown).QuerySelectorAll("h1, h2, h3, h4, h5, h6").Select(h => h.TagName);

        Assert.Equal(levels, string.Join(' ', found));
    }

    [Fact]
    public void Whatever_is_thrown_together_of_markdowns_marks_stays_harmless()
    {
        Gen.Int[0, Pieces.Length - 1].Array[0, 24].Sample(picks =>
        {
            var html = Parse(string.Concat(picks.Select(pick => Pieces[pick])));
            Assert.Empty(html.QuerySelectorAll("img, script, svg, iframe, style"));
            Assert.All(html.QuerySelectorAll("*").SelectMany(e => e.Attributes), a => Assert.Contains(a.Name, Attributes));
            Assert.All(html.QuerySelectorAll("a").Cast<AngleSharp.Html.Dom.IHtmlAnchorElement>(), a => Assert.Contains(a.Protocol, Schemes));
        }, iter: 10_000);
    }

    private static string Write(string markdown)
    {
        using var text = new StringWriter();
        OwnersMarkdown.Render(markdown).WriteTo(text, HtmlEncoder.Default);
        return text.ToString();
    }

    private static IElement Parse(string markdown) => new HtmlParser().ParseDocument("<base href=https://shop.example/>" + Write(markdown)).Body!;
}
