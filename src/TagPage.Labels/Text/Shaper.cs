using System.Globalization;
using System.Text;

namespace TagPage.Labels.Text;

/// <summary>Turns a line of text into glyphs: a font for every character, HarfBuzz for their forms and places.</summary>
public static class Shaper
{
    /// <summary>
    /// Shapes one line. Space of any kind becomes one blank; control and formatting characters go. The order of mixed
    /// directions is a simple one: what is Hebrew or Arabic runs right to left, the first letter decides how the parts
    /// follow each other. That is enough for names; it is not the whole of the Unicode bidirectional algorithm (UAX 9).
    /// </summary>
    public static ShapedText Shape(string text, bool isBold = false)
    {
        var missing = new List<string>();
        var parts = Parts(Clean(text), isBold, missing);
        var isRightToLeft = parts.FirstOrDefault(part => part.Strong is not null)?.Strong ?? false;
        var joined = Joined(parts, isRightToLeft);
        var runs = joined
            .Select(part => RunOf(part.Font, Drawn(part), part.Strong == true))
            .ToList();
        var printed = string.Concat(joined.Select(part => part.Text));
        if (isRightToLeft)
            runs.Reverse();
        return new ShapedText(printed, runs, missing);
    }

    /// <summary>One blank of the plain font.</summary>
    internal static GlyphRun Blank { get; } = BlankOf(LabelFonts.For(' ', null, isBold: false)!);

    private static GlyphRun BlankOf(LabelFont font) => RunOf(font, " ", false);

    private static GlyphRun RunOf(LabelFont font, string text, bool isRightToLeft) => new(font, text, isRightToLeft, font.Shape(text, isRightToLeft));

    // Fitted to few dots, the three of one glyph run into a line; three full stops keep apart.
    private static string Drawn(Part part) => part.Font.IsFitted ? part.Text.Replace("…", "...", StringComparison.Ordinal) : part.Text;

    private sealed record Part(string Text, LabelFont Font, bool? Strong);

    private static string Clean(string text)
    {
        var clean = new StringBuilder();
        // Half of a surrogate pair cannot be normalised, and is nothing.
        var whole = string.Concat(text.EnumerateRunes().Where(rune => rune != Rune.ReplacementChar).Select(rune => rune.ToString()));
        foreach (var rune in whole.Normalize(NormalizationForm.FormC).EnumerateRunes())
        {
            if (Rune.IsWhiteSpace(rune))
                clean.Append(clean.Length > 0 && clean[^1] != ' ' ? " " : "");
            else if (Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Control or UnicodeCategory.PrivateUse))
                clean.Append(rune.ToString());
        }
        return clean.ToString().TrimEnd();
    }

    private static List<Part> Parts(string text, bool isBold, List<string> missing)
    {
        var parts = new List<Part>();
        LabelFont? font = null;
        for (var elements = StringInfo.GetTextElementEnumerator(text); elements.MoveNext();)
        {
            var element = elements.GetTextElement();
            var shown = string.Concat(element.EnumerateRunes().Where(IsShown).Select(rune => rune.ToString()));
            if (shown.Length == 0)
                continue;
            if (FontOf(shown, font, isBold) is { } found)
                parts.Add(new Part(shown, font = found, Direction.Of(shown)));
            else if (!missing.Contains(element))
                missing.Add(element);
        }
        return [.. parts.SkipWhile(part => part.Text == " ").Reverse().SkipWhile(part => part.Text == " ").Reverse()];
    }

    // Joiners and variation selectors choose between forms of a character and are nothing by themselves.
    private static bool IsShown(Rune rune) =>
        Rune.GetUnicodeCategory(rune) != UnicodeCategory.Format && rune.Value is not (>= 0xFE00 and <= 0xFE0F);

    private static LabelFont? FontOf(string element, LabelFont? inUse, bool isBold)
    {
        var first = LabelFonts.For(element.EnumerateRunes().First().Value, inUse, isBold);
        return first is not null && element.EnumerateRunes().All(rune => first.Has(rune.Value)) ? first
            : inUse is not null && element.EnumerateRunes().All(rune => inUse.Has(rune.Value)) ? inUse
            : null;
    }

    private static List<Part> Joined(List<Part> parts, bool isRightToLeft)
    {
        var joined = new List<Part>();
        for (var i = 0; i < parts.Count; i++)
        {
            var part = parts[i] with { Strong = Resolved(parts, i, isRightToLeft) };
            if (joined.Count > 0 && joined[^1].Font == part.Font && joined[^1].Strong == part.Strong)
                joined[^1] = joined[^1] with { Text = joined[^1].Text + part.Text };
            else
                joined.Add(part);
        }
        return joined;
    }

    // A blank between two words of one direction goes with them; elsewhere with the line.
    private static bool Resolved(List<Part> parts, int at, bool isRightToLeft)
    {
        if (parts[at].Strong is { } own)
            return own;
        var before = parts.Take(at).LastOrDefault(part => part.Strong is not null)?.Strong ?? isRightToLeft;
        var after = parts.Skip(at + 1).FirstOrDefault(part => part.Strong is not null)?.Strong ?? isRightToLeft;
        return before == after ? before : isRightToLeft;
    }
}
