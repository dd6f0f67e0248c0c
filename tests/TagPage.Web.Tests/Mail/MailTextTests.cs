using AngleSharp.Html.Parser;
using CsCheck;
using TagPage.Records.Outbox;
using TagPage.Web.Mail;

namespace TagPage.Web.Tests.Mail;

/// <summary>Templates in pieces: what is the owner's, what was typed, and what is a link.</summary>
public sealed class MailTextTests
{
    private const string Link = "https://tag.example/n/7-x";

    private static readonly string[] Template =
    [
        "{client}", "{client}", "{link}", "{rows}", "[", "](", ")", "[words]({link})", "<", ">", "`", "```", "\n", "\n\n", "    ", "# ", "> ", "- ", "*", "_", "!",
        "[a]: ", "\"", "https://heron.example/", "\uE000", "\uE001", "0", "&", "\\", " ", "x",
    ];

    private static readonly string[] Typed =
    [
        "{link}", "{client}", "\uE0001\uE001", "\uE000", "\uE001", "[", "](", ")", "https://evil.example", "www.evil.example", "<", ">", "`", "\n", "\n\n", "    ",
        "# ", "*", "_", "[a]: ", "\"", "&#91;", "\\", "<a href=//evil.example>", "é", "x", " ",
    ];

    // The kinds of marks are those of CommonMark 0.31.2: links (6.3), references (4.7), autolinks (6.5), code (4.4, 4.5, 6.1), emphasis (6.2).
    [Fact]
    public void No_typed_text_changes_what_links_a_template_holds_wherever_the_owner_put_it() =>
        Gen.Select(Gen.Int[0, Template.Length - 1].Array[1, 12], Gen.Int[0, Typed.Length - 1].Array[1, 6]).Sample((template, typed) =>
        {
            var (words, name) = (string.Concat(template.Select(i => Template[i])), string.Concat(typed.Select(i => Typed[i])));
            Assert.Equal(Links(words, "Zoe"), Links(words, name));
        }, iter: 3_000);

    private static IEnumerable<string> Links(string template, string typed) =>
        Parse(Fill(template, typed)).QuerySelectorAll("a, img, [src], [href]").Select(e => e.TagName + e.GetAttribute("href"));

    [Theory]
    [InlineData("[words]({link})", "<a href=\"https://tag.example/n/7-x\">words</a>")]
    [InlineData("{link}", "<a href=\"https://tag.example/n/7-x\">https://tag.example/n/7-x</a>")]
    [InlineData("**{client}**", "<strong>*Zoe* &lt;b&gt;</strong>")]
    [InlineData("`{client}`", "<code>*Zoe* &lt;b&gt;</code>")]
    [InlineData("[{client}](https://heron.example)", "<a href=\"https://heron.example\">*Zoe* &lt;b&gt;</a>")]
    [InlineData("https://heron.example", "<a href=\"https://heron.example\">https://heron.example</a>")]
    [InlineData("[x](https://heron.example/{client})", "x")]
    [InlineData("{unknown}", "{unknown}")]
    public void Owners_markdown_stays_and_values_are_text(string template, string html) =>
        Assert.Equal($"<p>{html}</p>", MailMarkdown.Html(Fill(template, "*Zoe* <b>"), _ => Link).Trim());

    [Fact]
    public void Value_of_several_lines_keeps_them() =>
        Assert.Equal("<p>Mon<br />\nTue</p>", MailMarkdown.Html(MailText.Fill("{hours}", ("hours", "Mon\r\nTue")), _ => "").Trim());

    [Theory]
    [InlineData("{client} {link}", "https://evil.example", "https[:]//evil.example https://tag.example/n/7-x")]
    [InlineData("{client} {link}", "WWW.evil.example", "WWW[.]evil.example https://tag.example/n/7-x")]
    [InlineData("https://heron.example/{client}", "Zoe", "https://heron.example/ Zoe")]
    [InlineData("{link}{client}", "/../stop", "https://tag.example/n/7-x /../stop")]
    [InlineData("Hello {client},", "Dr. A.B. Zoe", "Hello Dr. A.B. Zoe,")]
    public void Plain_text_holds_the_templates_addresses_and_no_others(string template, string typed, string text) =>
        Assert.Equal(text, PlainMail.Of(Fill(template, typed), _ => Link));

    [Theory]
    [InlineData("one\ntwo")]
    [InlineData("one\r\ntwo")]
    [InlineData("one\rtwo")]
    [InlineData("one\u2028two")]
    [InlineData("one\u2029two")]
    [InlineData("one\u0085two")]
    [InlineData("one\vtwo")]
    [InlineData("one\ftwo")]
    public void Every_line_of_a_quotation_is_marked_as_somebody_elses(string typed)
    {
        var mail = MailText.Join("\n", [MailText.Words("A finder writes:"), MailText.Quoted(typed), MailText.Words("Kind regards")]);

        Assert.Equal("A finder writes:\n> one\n> two\nKind regards", PlainMail.Of(mail));
        Assert.Contains("<p>A finder writes:</p>\n<blockquote>one<br>\ntwo</blockquote>\n<p>Kind regards</p>", MailHtml.OfPlain(mail, _ => ""), StringComparison.Ordinal);
    }

    [Fact]
    public void Stored_pieces_come_back_as_they_were()
    {
        var mail = MailText.Join("\n", [Fill("{client} {link}", "\"{link}\" 鷺"), MailText.Quoted("x"), MailText.Digits(3)]);

        Assert.Equal(mail.Parts, MailText.Read(mail.Stored).Parts);
    }

    private static MailText Fill(string template, string typed) => MailText.Fill(template,
        ("client", typed), ("link", MailText.Link(LinkPurpose.Reminder, 7)), ("rows", MailText.Join("\n", [MailText.Fill("- {client}: due", ("client", typed)), MailText.Fill("- {client}", ("client", typed))])));

    private static AngleSharp.Html.Dom.IHtmlDocument Parse(MailText text) => new HtmlParser().ParseDocument(MailHtml.Of(text, _ => Link));
}
