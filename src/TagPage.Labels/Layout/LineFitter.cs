using System.Globalization;
using TagPage.Labels.Content;
using TagPage.Labels.Text;

namespace TagPage.Labels.Layout;

/// <summary>
/// Finds the largest size at which all lines fit, never under five points. If there is none, the least important line
/// is shortened, cut or dropped, and a sentence says so.
/// </summary>
internal sealed class LineFitter(int height, double width, double least, double most, IEnumerable<string> warnings)
{
    private readonly List<string> _warnings = [.. warnings];

    /// <summary>What was shortened, left out, or has no glyph.</summary>
    public IReadOnlyList<string> Warnings => _warnings;

    /// <summary>Whether a line had to be shortened or left out for lack of room.</summary>
    public bool IsShort { get; private set; }

    /// <summary>Null where no line is left.</summary>
    public ColumnFit? Fit(IEnumerable<LabelLine> wanted)
    {
        var lines = wanted.Select(line => (Line: line, Shaped: Shape(line))).Where(pair => pair.Shaped.Text.Text.Length > 0).ToList();
        // A line that cannot fit even alone must not push out the others.
        lines = [.. lines.Select(pair => Best([pair.Shaped]) is null ? Shortened(pair.Line, []) ?? pair : pair)];
        while (lines.Count > 0)
        {
            if (Best(lines.Select(pair => pair.Shaped)) is { } fit)
                return fit;
            IsShort = true;
            var (line, _) = lines[^1];
            lines.RemoveAt(lines.Count - 1);
            if (Shortened(line, lines) is { } shorter)
                lines.Add(shorter);
            else
                _warnings.Add($"There is no room for {line.Name} (“{line.Text}”); it is left out.");
        }
        return null;
    }

    private ColumnFit? Best(IEnumerable<ColumnFit.Line> lines) => ColumnFit.Best([.. lines], height, width, least, most);

    private ColumnFit.Line Shape(LabelLine line)
    {
        var shaped = Shaper.Shape(line.Text);
        if (shaped.Missing.Count > 0)
            _warnings.Add($"No font here has {string.Join(' ', shaped.Missing)}; {line.Name} is printed without.");
        return new ColumnFit.Line(shaped, line.Scale);
    }

    private (LabelLine, ColumnFit.Line)? Shortened(LabelLine line, List<(LabelLine Line, ColumnFit.Line Shaped)> others)
    {
        foreach (var text in line.Shorter.Concat(Cuts(line)))
        {
            var shaped = new ColumnFit.Line(Shaper.Shape(text), line.Scale);
            // It must fit alone; whether it fits beside the others shows once there are fewer of them.
            if (Best([.. others.Select(other => other.Shaped), shaped]) is null)
                continue;
            _warnings.Add($"There is no room for all of {line.Name} (“{line.Text}”); it is shortened to “{shaped.Text.Text}”.");
            return (line with { Text = text }, shaped);
        }
        return null;
    }

    // Never a single letter left, and never a cut inside a character.
    private static IEnumerable<string> Cuts(LabelLine line)
    {
        if (!line.MayBeCut)
            yield break;
        var text = line.Shorter.Count > 0 ? line.Shorter[^1] : line.Text;
        for (var elements = new StringInfo(text).LengthInTextElements - 1; elements >= 3; elements--)
            yield return new StringInfo(text).SubstringByTextElements(0, elements).TrimEnd() + "…";
    }
}
