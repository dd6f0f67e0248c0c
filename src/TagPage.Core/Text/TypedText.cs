using System.Globalization;
using System.Text;

namespace TagPage.Core.Text;

/// <summary>What people type, whoever they are and wherever they type it: the one rule for lines and for invisible characters.</summary>
public static class TypedText
{
    /// <summary>With every kind of line break (Unicode Standard, 5.8: CR, LF, NEL, VT, FF, LS, PS) turned into the one we keep.</summary>
    public static string Lines(string text) => text.ReplaceLineEndings("\n").Replace('\v', '\n');

    /// <summary>No way to begin another line, no other control characters, and nothing that reverses the text after it.</summary>
    public static bool IsOneLine(string text) => !text.Any(c => char.IsControl(c) || c is '\u2028' or '\u2029' || TurnsAbout(c));

    /// <summary>
    /// How typed text is kept: composed (NFC), without spaces around it, and empty if it holds nothing but invisible
    /// characters. Text of one line keeps what it must be refused for.
    /// </summary>
    public static string Kept(string typed, bool mayHaveLines)
    {
        var kept = new StringBuilder();
        foreach (var c in mayHaveLines ? Lines(typed) : typed)
            if (!(IsHidden(c) || (mayHaveLines && (TurnsAbout(c) || (char.IsControl(c) && c is not ('\n' or '\t'))))))
                kept.Append(c);
        var text = kept.ToString().Trim().Normalize(NormalizationForm.FormC);
        return text.All(IsUnseen) ? "" : text;
    }

    /// <summary>Embeddings, overrides and isolates of the Unicode bidirectional algorithm (UAX #9).</summary>
    private static bool TurnsAbout(char c) => c is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');

    /// <summary>U+FFFE and U+FFFF are no characters; composing would throw. The others hide in a name.</summary>
    private static bool IsHidden(char c) => c is '\uFFFE' or '\uFFFF' or '\uFEFF' or '\u200B';

    /// <summary>Joiners belong in names in many scripts, but are no name by themselves.</summary>
    private static bool IsUnseen(char c) => char.IsWhiteSpace(c) || char.GetUnicodeCategory(c) == UnicodeCategory.Format;
}
