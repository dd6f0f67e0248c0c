using System.Globalization;
using TagPage.Labels.Content;
using TagPage.Labels.Text;

namespace TagPage.Labels.Layout;

/// <summary>Shapes the texts of one label, each once.</summary>
internal sealed class Typing
{
    private const int FewestLetters = 3;

    private readonly Dictionary<(string, bool), ShapedText> _shaped = [];
    private readonly Dictionary<(string, string, bool), ShapedText> _captioned = [];

    public ShapedText Shape(string text, bool isBold)
    {
        if (!_shaped.TryGetValue((text, isBold), out var shaped))
            _shaped[(text, isBold)] = shaped = Shaper.Shape(text, isBold);
        return shaped;
    }

    /// <summary>A line as it stands, its caption before it.</summary>
    public ShapedText Shape(LabelLine line, string text)
    {
        if (line.Caption.Length == 0)
            return Shape(text, line.IsBold);
        var key = (line.Caption, text, line.IsBold);
        if (!_captioned.TryGetValue(key, out var shaped))
            _captioned[key] = shaped = Shape(line.Caption, false).And(Shape(text, line.IsBold));
        return shaped;
    }

    /// <summary>In how many rows a line may stand. Where length is short, a caption may stand over what it leads to.</summary>
    public static int MostRows(LabelLine line, bool breaksCaptions) => Math.Max(breaksCaptions && line.Caption.Length > 0 ? 2 : 1, line.Parts.Count);

    /// <summary>A line set in so many rows; null where it has not as many parts.</summary>
    public IReadOnlyList<ShapedText>? InRows(LabelLine line, int rows)
    {
        if (rows == 1)
            return [Shape(line, line.Text)];
        if (rows == 2 && line.Parts.Count < 2 && line.Caption.Length > 0)
            return [Shape(line.Caption, false), Shape(line.Text, line.IsBold)];
        return rows > line.Parts.Count ? null : [.. Broken(line.Parts, rows).Select(text => Shape(text, line.IsBold))];
    }

    // The break that leaves the longest row shortest, counted in characters.
    public static List<string> Broken(IReadOnlyList<string> parts, int rows)
    {
        if (rows == 1)
            return [string.Concat(parts).TrimEnd()];
        List<string>? best = null;
        for (var first = 1; first <= parts.Count - rows + 1; first++)
        {
            List<string> broken = [string.Concat(parts.Take(first)).TrimEnd(), .. Broken([.. parts.Skip(first)], rows - 1)];
            if (best is null || broken.Max(row => row.Length) <= best.Max(row => row.Length))
                best = broken;
        }
        return best!;
    }

    /// <summary>
    /// The longest beginning of a text that is no wider than the room, with an ellipsis: whole words where the first of
    /// them has room, else a part of it; null where even three characters are too wide.
    /// </summary>
    public static string? Cut(string text, string keptEnd, Func<string, bool> fits)
    {
        var body = keptEnd.Length > 0 && text.EndsWith(keptEnd, StringComparison.Ordinal) ? text[..^keptEnd.Length] : text;
        return AfterWord(body, keptEnd, fits) ?? Within(new StringInfo(body), keptEnd, fits);
    }

    private static string? AfterWord(string body, string keptEnd, Func<string, bool> fits)
    {
        for (var end = body.LastIndexOfAny([' ', '-']); end >= FewestLetters; end = body.LastIndexOfAny([' ', '-'], end - 1))
        {
            if (body[..end].TrimEnd(' ', '-') + "…" + keptEnd is var cut && fits(cut))
                return cut;
        }
        return null;
    }

    private static string? Within(StringInfo body, string keptEnd, Func<string, bool> fits)
    {
        string? best = null;
        for (int least = FewestLetters, most = body.LengthInTextElements - 1; least <= most;)
        {
            var middle = (least + most) / 2;
            var cut = body.SubstringByTextElements(0, middle).TrimEnd() + "…" + keptEnd;
            if (fits(cut))
                (best, least) = (cut, middle + 1);
            else
                most = middle - 1;
        }
        return best;
    }
}
