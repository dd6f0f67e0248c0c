using System.Globalization;
using System.Text.RegularExpressions;
using Markdig.Helpers;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using TagPage.Records.Outbox;
using TagPage.Web.Words;

namespace TagPage.Web.Mail;

/// <summary>
/// Writes a mail whose template is Markdown. The template is parsed with a mark in place of each value and link; the
/// marks are replaced in what was parsed, so that no value is ever read as Markdown. Marks are made of two characters
/// that are taken out of the template before, and values are not there yet: nobody can type them.
/// </summary>
public sealed partial class MailMarkdown
{
    private const char Begin = '\uE000', End = '\uE001';

    private readonly IReadOnlyList<MailPart> _parts;
    private readonly Func<MailPart, string> _made;

    private MailMarkdown(MailText text, Func<MailPart, string> made) => (_parts, _made) = (text.Parts, made);

    /// <summary>Line breaks stay, and an address that stands bare in the template becomes a link.</summary>
    /// <param name="text">What to write.</param>
    /// <param name="made">The address or the digits of a part that is made now.</param>
    public static string Html(MailText text, Func<MailPart, string> made) => new MailMarkdown(text, made).Html();

    private string Html()
    {
        var template = string.Concat(_parts.Select((p, i) => p.Kind == PartKind.Words
            ? p.Text.Replace($"{Begin}", "", StringComparison.Ordinal).Replace($"{End}", "", StringComparison.Ordinal)
            : string.Create(CultureInfo.InvariantCulture, $"{Begin}{i}{End}")));
        var document = OwnersMarkdown.Read(BareAddress().Replace(template, "<$0>").Replace("\n", "  \n", StringComparison.Ordinal));
        foreach (var link in document.Descendants<LinkInline>().ToList())
            Point(link);
        foreach (var link in document.Descendants<AutolinkInline>().Where(l => l.Url.Contains(Begin, StringComparison.Ordinal)).ToList())
            link.ReplaceBy(new LiteralInline(link.Url));
        foreach (var literal in document.Descendants<LiteralInline>().Where(l => l.Content.AsSpan().Contains(Begin)).ToList())
            Put(literal);
        foreach (var code in document.Descendants<CodeInline>())
            code.Content = Shown(code.Content);
        foreach (var block in document.Descendants<CodeBlock>())
            Put(block);
        return OwnersMarkdown.Write(document);
    }

    /// <summary>[words]({link}) leads there; an address that contains a value is not a link.</summary>
    private void Point(LinkInline link)
    {
        link.Title = link.Title is null ? null : Shown(link.Title);
        if (link.Url?.Contains(Begin, StringComparison.Ordinal) != true)
            return;
        var mark = Mark().Match(link.Url);
        if (mark.Length == link.Url.Length && Of(mark) is { Kind: PartKind.Link } part)
            link.Url = _made(part);
        else
            link.ReplaceBy(new ContainerInline());
    }

    private void Put(LiteralInline literal)
    {
        var (text, at) = (literal.Content.ToString(), 0);
        var isInLink = literal.FindParentOfType<LinkInline>().Any();
        foreach (Match mark in Mark().Matches(text))
        {
            literal.InsertBefore(new LiteralInline(text[at..mark.Index]));
            if (Of(mark) is { Kind: PartKind.Link } link && !isInLink)
                literal.InsertBefore(new AutolinkInline(_made(link)));
            else
                foreach (var piece in Lines(Shown(Of(mark))))
                    literal.InsertBefore(piece);
            at = mark.Index + mark.Length;
        }
        literal.ReplaceBy(new LiteralInline(text[at..]));
    }

    private static IEnumerable<Inline> Lines(string text) =>
        text.Split('\n').SelectMany((line, i) => i == 0 ? (Inline[])[new LiteralInline(line)] : [new LineBreakInline { IsHard = true }, new LiteralInline(line)]);

    private void Put(CodeBlock block)
    {
        for (var i = 0; i < block.Lines.Count; i++)
            if (block.Lines.Lines[i].Slice.ToString() is var line && line.Contains(Begin, StringComparison.Ordinal))
                block.Lines.Lines[i].Slice = new StringSlice(Shown(line));
    }

    private string Shown(string text) => Mark().Replace(text, mark => Shown(Of(mark)));

    private string Shown(MailPart part) => part.Kind is PartKind.Typed or PartKind.Quoted ? PlainMail.Unlinked(part.Text) : _made(part);

    private MailPart Of(Match mark) => _parts[int.Parse(mark.Groups[1].Value, CultureInfo.InvariantCulture)];

    [GeneratedRegex("\uE000([0-9]+)\uE001")]
    private static partial Regex Mark();

    [GeneratedRegex(@"(?<![(<\w])https?://[^\s<>()]+")]
    private static partial Regex BareAddress();
}
