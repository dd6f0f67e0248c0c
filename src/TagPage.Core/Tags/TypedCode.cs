using System.Globalization;

namespace TagPage.Core.Tags;

/// <summary>Strips a typed or scanned code of everything around it; what is left still has to be judged.</summary>
internal static class TypedCode
{
    private const int LongestAddress = 2000;
    private const string TagPath = "/t/";

    // Look like dashes on a keyboard but are filed elsewhere in Unicode: minus, hyphen bullet, the Japanese long sign.
    private const string OtherDashes = "\u2212\u2043\u30FC";

    /// <summary>At most one character more than a code has; empty when there is nothing to judge.</summary>
    public static string Clean(string? typed)
    {
        if (typed is null || typed.Length > LongestAddress)
            return "";
        Span<char> kept = stackalloc char[TagCode.Length + 1];
        var count = 0;
        foreach (var character in CodePart(typed))
        {
            if (IsNoise(character))
                continue;
            if (count == kept.Length)
                break;
            kept[count++] = Canonical(character);
        }
        return kept[..count].ToString();
    }

    private static ReadOnlySpan<char> CodePart(string typed)
    {
        var path = typed.AsSpan();
        var end = path.IndexOfAny('?', '#');
        if (end >= 0)
            path = path[..end];
        var start = path.LastIndexOf(TagPath, StringComparison.OrdinalIgnoreCase);
        if (start < 0)
            return path;
        var code = path[(start + TagPath.Length)..];
        var slash = code.IndexOf('/');
        return slash < 0 ? code : code[..slash];
    }

    private static bool IsNoise(char character) =>
        char.IsWhiteSpace(character)
        || OtherDashes.Contains(character, StringComparison.Ordinal)
        || char.GetUnicodeCategory(character) is UnicodeCategory.DashPunctuation or UnicodeCategory.Format;

    private static char Canonical(char character)
    {
        // Full-width forms, as an East Asian keyboard types them, sit at a fixed distance from ASCII.
        var ascii = character is >= '\uFF01' and <= '\uFF5E' ? (char)(character - 0xFEE0) : character;
        var upper = char.IsAsciiLetterLower(ascii) ? (char)(ascii - 'a' + 'A') : ascii;
        return upper switch { 'O' => '0', 'I' or 'L' => '1', _ => upper };
    }
}
