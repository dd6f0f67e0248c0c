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
            yield return (run, x);
            x += run.Width * piece.Size;
        }
    }

    /// <summary>Where each glyph of a run stands, in dots.</summary>
    public static IEnumerable<(double X, double Y)> Places(this GlyphRun run, double x, TextPiece piece)
    {
        var scale = piece.Size / run.Font.UnitsPerEm;
        foreach (var glyph in run.Glyphs)
        {
            yield return (x + glyph.OffsetX * scale, piece.Baseline - glyph.OffsetY * scale);
            x += glyph.Advance * scale;
        }
    }
}
