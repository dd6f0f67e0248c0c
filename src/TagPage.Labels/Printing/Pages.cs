using TagPage.Labels.Layout;

namespace TagPage.Labels.Printing;

/// <summary>Ways of putting labels on pages of tape.</summary>
public static class Pages
{
    /// <summary>PDF pages are at most 14,400 units long (ISO 32000, annex C): a longer strip goes on on the next page.</summary>
    public const double LongestMm = 5000;

    private const double CutMarkMm = 0.15;

    /// <summary>One page a label, each exactly as large as its label.</summary>
    public static IEnumerable<PrintPage> OneEach(IEnumerable<LaidLabel> labels) =>
        labels.Select(label => new PrintPage(label.LengthMm, label.Stock.Tape.WidthMm, [new PlacedLabel(label, 0, 0)]));

    /// <summary>Labels one after the other on a strip, with a mark at both edges wherever one ends and the next begins.</summary>
    public static IEnumerable<PrintPage> Strip(IEnumerable<LaidLabel> labels)
    {
        var (placed, end) = (new List<PlacedLabel>(), 0.0);
        foreach (var label in labels)
        {
            if (placed.Count > 0 && (end + label.LengthMm > LongestMm || label.Stock != placed[0].Label.Stock))
            {
                yield return OnStrip(placed, end);
                (placed, end) = ([], 0);
            }
            placed.Add(new PlacedLabel(label, end, 0));
            end += label.LengthMm;
        }
        if (placed.Count > 0)
            yield return OnStrip(placed, end);
    }

    private static PrintPage OnStrip(List<PlacedLabel> placed, double length)
    {
        var stock = placed[0].Label.Stock;
        var (width, margin) = (stock.Tape.WidthMm, stock.Printer.MarginMm);
        var mark = Math.Min(1, (width - 2 * margin) / 6);
        return new PrintPage(length, width, placed)
        {
            Marks = [.. placed.Skip(1).SelectMany(label => (Mark[])
            [
                new(label.XMm - CutMarkMm / 2, margin, CutMarkMm, mark),
                new(label.XMm - CutMarkMm / 2, width - margin - mark, CutMarkMm, mark),
            ])],
        };
    }
}
