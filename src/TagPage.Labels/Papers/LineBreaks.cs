using System.Text;

namespace TagPage.Labels.Papers;

/// <summary>
/// Where a line of text may be broken: at blanks, and between the letters of Chinese and Japanese, which have none; but not before a sign
/// that closes nor after one that opens. A short form of the classes ID, CL, NS and OP of Unicode Standard Annex 14, from memory.
/// </summary>
internal static class LineBreaks
{
    private const string NeverFirst = "、。，．：；！？）」』】〉》々ーぁぃぅぇぉっゃゅょァィゥェォッャュョ％～", NeverLast = "（「『【〈《¥￥";

    /// <summary>As few lines as they fit into; what cannot be broken stays whole.</summary>
    /// <param name="text">One paragraph.</param>
    /// <param name="fits">Whether so much fits on a line.</param>
    public static List<string> Of(string text, Func<string, bool> fits)
    {
        var lines = new List<string> { "" };
        foreach (var (piece, afterBlank) in Pieces(text))
        {
            var longer = afterBlank && lines[^1].Length > 0 ? $"{lines[^1]} {piece}" : lines[^1] + piece;
            if (lines[^1].Length == 0 || fits(longer))
                lines[^1] = longer;
            else
                lines.Add(piece);
        }
        return lines;
    }

    private static IEnumerable<(string Piece, bool AfterBlank)> Pieces(string text)
    {
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var (piece, isFirst) = (new StringBuilder(), true);
            foreach (var rune in word.EnumerateRunes())
            {
                if (piece.Length > 0 && MayBreak(piece[^1], rune))
                {
                    yield return (piece.ToString(), isFirst);
                    isFirst = false;
                    piece.Clear();
                }
                piece.Append(rune.ToString());
            }
            yield return (piece.ToString(), isFirst);
        }
    }

    private static bool MayBreak(char before, Rune after) =>
        (IsWide(before) || IsWide(after.Value)) && !NeverLast.Contains(before) && !(after.IsBmp && NeverFirst.Contains((char)after.Value));

    // CJK signs, kana, ideographs with their surrogates, full forms.
    private static bool IsWide(int code) => code is >= 0x2E80 and <= 0x9FFF or >= 0xD800 and <= 0xDFFF or >= 0xF900 and <= 0xFAFF or >= 0xFF00 and <= 0xFFEF or >= 0x20000;
}
