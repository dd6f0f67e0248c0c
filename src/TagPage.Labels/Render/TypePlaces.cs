using TagPage.Labels.Layout;
using TagPage.Labels.Text;

namespace TagPage.Labels.Render;

internal static class TypePlaces
{
    /// <summary>The runs of a line and where each begins, in dots.</summary>
    public static IEnumerable<(GlyphRun Run, double X)> RunsPlaced(this TextPiece piece)
    {
        var x = piece.X;
        foreach (var run in piece.Text.Runs)
        {
            yield return (run.ForSize(piece.Size), x);
            x += run.WidthAt(piece.Size);
        }
    }

    /// <summary>Where each glyph of a run stands, in dots.</summary>
    public static IEnumerable<(double X, double Y)> Places(this GlyphRun run, double x, TextPiece piece)
    {
        var scale = (double)piece.Size / run.Font.UnitsPerEm;
        foreach (var (glyph, step) in run.Glyphs.Zip(run.Steps(piece.Size)))
        {
            yield return (x + glyph.OffsetX * scale, piece.Baseline - glyph.OffsetY * scale);
            x += step;
        }
    }
}
