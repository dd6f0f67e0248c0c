using System.Globalization;
using System.Net;
using System.Text;
using SkiaSharp;
using TagPage.Labels.Layout;

namespace TagPage.Labels.Render;

/// <summary>A label as vector graphics at its true size, in the colours of its tape, for the screen.</summary>
public static class LabelSvg
{
    /// <summary>One svg element without scripts, styles, ids or anything from elsewhere. Letters are outlines.</summary>
    /// <param name="label">The label.</param>
    /// <param name="title">What a screen reader says before the words that stand on it.</param>
    public static string Of(LaidLabel label, string title)
    {
        var svg = new StringBuilder();
        var stock = label.Stock;
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{label.LengthMm:0.###}mm\" height=\"{stock.Tape.WidthMm:0.###}mm\"");
        svg.Append(CultureInfo.InvariantCulture, $" viewBox=\"0 0 {label.LengthDots} {stock.Tape.WidthMm / stock.Printer.DotMm:0.###}\" role=\"img\">");
        svg.Append(CultureInfo.InvariantCulture, $"<title>{WebUtility.HtmlEncode(title)}: {WebUtility.HtmlEncode(string.Join("; ", label.Words))}</title>");
        svg.Append(CultureInfo.InvariantCulture, $"<path fill=\"{stock.Tape.Colour}\" d=\"M0 0h{label.LengthDots}v{label.HeightDots + 1}H0z\"/><g fill=\"{stock.Tape.Ink}\">");
        foreach (var piece in label.Pieces)
            Draw(svg, piece);
        return svg.Append("</g></svg>").ToString();
    }

    private static void Draw(StringBuilder svg, Piece piece)
    {
        switch (piece)
        {
            case SquarePiece square:
                Runs(svg, square.X, square.Y, square.DotsPerModule, QrRuns.Of(square.Qr));
                break;
            case PicturePiece picture:
                Runs(svg, picture.X, picture.Y, 1, QrRuns.Of(picture.Width, picture.Height, picture.IsDark));
                break;
            case BoxPiece box:
                svg.Append(CultureInfo.InvariantCulture, $"<path d=\"M{box.X:0.##} {box.Y:0.##}h{box.Width:0.##}v{box.Height:0.##}h-{box.Width:0.##}z\"/>");
                break;
            case TextPiece text:
                Letters(svg, text);
                break;
        }
    }

    private static void Runs(StringBuilder svg, double x, double y, int scale, IEnumerable<(int Column, int Row, int Length)> runs)
    {
        svg.Append(CultureInfo.InvariantCulture, $"<path shape-rendering=\"crispEdges\" transform=\"translate({x:0.##} {y:0.##}) scale({scale})\" d=\"");
        foreach (var (column, row, length) in runs)
            svg.Append(CultureInfo.InvariantCulture, $"M{column} {row}h{length}v1h-{length}z");
        svg.Append("\"/>");
    }

    private static void Letters(StringBuilder svg, TextPiece piece)
    {
        foreach (var (run, x) in piece.RunsPlaced())
        {
            using var font = new SKFont(run.Font.Typeface, run.Font.UnitsPerEm) { Hinting = SKFontHinting.None };
            var scale = (double)piece.Size / run.Font.UnitsPerEm;
            foreach (var ((left, baseline), glyph) in run.Places(x, piece).Zip(run.Glyphs))
            {
                using var path = font.GetGlyphPath(glyph.Id);
                if (path is { IsEmpty: false })
                    svg.Append(CultureInfo.InvariantCulture, $"<path transform=\"translate({left:0.###} {baseline:0.###}) scale({scale:0.#####})\" d=\"{path.ToSvgPathData()}\"/>");
            }
        }
    }
}
