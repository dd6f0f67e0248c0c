using TagPage.Labels.Text;

namespace TagPage.Labels.Layout;

/// <summary>Lines set in columns.</summary>
/// <param name="Size">Of a plain line, in dots.</param>
/// <param name="Columns">The lines of each column, from above.</param>
/// <param name="Width">Of all, gaps included, in dots.</param>
internal sealed record ColumnFit(double Size, IReadOnlyList<IReadOnlyList<ColumnFit.Line>> Columns, double Width)
{
    /// <summary>Distance of two lines of size 1, and from a line's top to its baseline; gap of two columns. Set by eye.</summary>
    public const double LineHeight = 1.14, Ascent = 0.88, Gap = 0.7;

    public sealed record Line(ShapedText Text, double Scale);

    /// <summary>The arrangement with the largest type, of equal ones the shortest; null where none reaches the least size.</summary>
    public static ColumnFit? Best(IReadOnlyList<Line> lines, int height, double width, double least, double most)
    {
        // No line is so much larger than plain lines that it would not fit alone.
        lines = [.. lines.Select(line => line with { Scale = Math.Min(line.Scale, Math.Max(1, height / (LineHeight * least) - 1e-6)) })];
        ColumnFit? best = null;
        for (var count = 1; count <= lines.Count; count++)
        {
            var fit = InColumns(lines, count, height, width, most);
            if (fit.Size >= least && (best is null || fit.Size > best.Size + 0.01 || (fit.Size > best.Size - 0.01 && fit.Width < best.Width)))
                best = fit;
        }
        return best;
    }

    public static double WidthOf(IReadOnlyList<Line> column) => column.Max(line => line.Text.Width * line.Scale);

    public static double HeightOf(IReadOnlyList<Line> column) => column.Sum(line => line.Scale) * LineHeight;

    private static ColumnFit InColumns(IReadOnlyList<Line> lines, int count, int height, double width, double most)
    {
        var columns = Split(lines, count);
        var wide = columns.Sum(WidthOf) + Gap * (columns.Count - 1);
        var size = Math.Min(most, Math.Min(height / columns.Max(HeightOf), wide > 0 ? width / wide : most));
        return new ColumnFit(size, columns, size * wide);
    }

    // In order, each column filled to the least height with which this many columns are enough.
    private static List<IReadOnlyList<Line>> Split(IReadOnlyList<Line> lines, int count)
    {
        List<IReadOnlyList<Line>> best = [lines];
        foreach (var limit in Heights(lines).Order())
        {
            best = Filled(lines, limit);
            if (best.Count <= count)
                break;
        }
        return best;
    }

    private static IEnumerable<double> Heights(IReadOnlyList<Line> lines)
    {
        for (var first = 0; first < lines.Count; first++)
        {
            var sum = 0.0;
            for (var last = first; last < lines.Count; last++)
                yield return sum += lines[last].Scale;
        }
    }

    private static List<IReadOnlyList<Line>> Filled(IReadOnlyList<Line> lines, double limit)
    {
        var columns = new List<List<Line>>();
        foreach (var line in lines)
        {
            if (columns.Count == 0 || columns[^1].Sum(other => other.Scale) + line.Scale > limit + 1e-9)
                columns.Add([]);
            columns[^1].Add(line);
        }
        return [.. columns];
    }
}
