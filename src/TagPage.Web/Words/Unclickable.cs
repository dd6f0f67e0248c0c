using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace TagPage.Web.Words;

/// <summary>
/// A stranger's words for an email: nothing in them becomes a link. Mail programs make links out of addresses they see
/// in plain text, so dots, colons and @ are bracketed where they could be part of one.
/// </summary>
public static partial class Unclickable
{
    public static string Of(string text) =>
        At().Replace(Scheme().Replace(Dot().Replace(Visible(text), "[.]"), "[:]"), "[at]");

    /// <summary>Without characters that reorder or hide others. The joiners stay: some scripts need them.</summary>
    private static string Visible(string text)
    {
        var kept = new StringBuilder(text.Length);
        foreach (var c in text)
            if (c is '\u200C' or '\u200D' || CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.Format)
                kept.Append(c);
        return kept.ToString();
    }

    /// <summary>Before a letter, as in a host name; 14.30 and 12.11.2026 stay.</summary>
    [GeneratedRegex(@"(?<=[\w\])-])[.\uFF0E](?=[\w-]*\p{L})")]
    private static partial Regex Dot();

    /// <summary>After a word and right before more, as in http: or tel:; 14:30 stays.</summary>
    [GeneratedRegex(@"(?<=\p{L}[\w+-]*)[:\uFF1A](?=\S)")]
    private static partial Regex Scheme();

    [GeneratedRegex("[@\uFF20]")]
    private static partial Regex At();
}
