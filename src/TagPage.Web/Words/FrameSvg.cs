using System.Globalization;
using Microsoft.AspNetCore.Html;
using TagPage.Core.Customising;
using TagPage.Core.Sports;

namespace TagPage.Web.Words;

/// <summary>
/// A frame from butt to tip to scale, ten units a centimetre: places as ticks, what is on it already hollow and what is
/// planned filled, areas like grams, and the balance point before and after.
/// </summary>
public static class FrameSvg
{
    private const int PerCm = 10, Side = 20, Middle = 150, Height = 330;
    private const double EndCm = 4;

    public static IHtmlContent Draw(FrameDrawing frame)
    {
        var svg = new HtmlContentBuilder()
            .AppendHtml($"<svg class=\"frame-picture\" viewBox=\"0 0 {N((frame.LengthCm * PerCm) + (2 * Side))} {Height}\" role=\"img\" aria-label=\"").Append(Says(frame)).AppendHtml("\">");
        Outline(svg, frame);
        foreach (var row in frame.Rows)
            Place(svg, row, frame);
        // One above and one below the axis: they are often a millimetre apart.
        Balance(svg, frame.BalanceCm, "before", Middle - 36, -1);
        Balance(svg, frame.BalanceAfterCm, "after", Middle + 36, 1);
        return svg.AppendHtml("</svg>");
    }

    private static string Says(FrameDrawing frame) =>
        $"The frame from butt to tip. It balances at {frame.Words.FromButt(frame.BalanceCm)} before and {frame.Words.FromButt(frame.BalanceAfterCm)} after. "
        + string.Join(", ", frame.Rows.Where(row => row.RoundedG != 0).Select(row => $"{frame.Words.Piece(row.RoundedG)} at {row.Name}"));

    private static void Outline(IHtmlContentBuilder svg, FrameDrawing frame)
    {
        var centre = StartingPlaces.HeadCentreCm(frame.Sport, frame.LengthCm);
        var (half, wide) = (frame.LengthCm - centre, frame.Sport == Sport.Tennis ? 13 : 10.5);
        var handle = frame.Sport == Sport.Badminton ? 1.3 : 1.6;
        svg.AppendHtml($"<ellipse class=\"outline\" cx=\"{N(X(centre))}\" cy=\"{Middle}\" rx=\"{N(half * PerCm)}\" ry=\"{N(wide * PerCm)}\"/>")
            .AppendHtml($"<path class=\"outline\" d=\"M{N(X(18))} {Middle}H{N(X(centre - half))}\"/>")
            .AppendHtml($"<rect class=\"outline\" x=\"{N(X(0))}\" y=\"{N(Middle - (handle * PerCm))}\" width=\"{18 * PerCm}\" height=\"{N(2 * handle * PerCm)}\" rx=\"4\"/>");
    }

    private static void Place(IHtmlContentBuilder svg, FrameDrawing.Row row, FrameDrawing frame)
    {
        foreach (var side in row.OffAxisCm > 0 ? new[] { -1, 1 } : [0])
        {
            var y = Middle + (side * row.OffAxisCm * PerCm);
            svg.AppendHtml($"<path class=\"place\" d=\"M{N(X(row.AtCm))} {N(y - 6)}v12\"/>");
            var share = side == 0 ? 1 : 0.5;
            Dot(svg, row.AtCm, y, row.EarlierG * share, "earlier");
            Dot(svg, row.AtCm, y, Math.Abs(row.RoundedG) * share, row.RoundedG < 0 ? "off" : "added");
            if (row.RoundedG != 0)
                svg.AppendHtml($"<text x=\"{N(X(row.AtCm))}\" y=\"{N(y - 14)}\" text-anchor=\"{Anchor(row, frame)}\">").Append(frame.Words.Piece(row.RoundedG * share)).AppendHtml("</text>");
        }
    }

    // At its ends the picture has no room for half a label.
    private static string Anchor(FrameDrawing.Row row, FrameDrawing frame) =>
        row.AtCm < EndCm ? "start" : row.AtCm > frame.LengthCm - EndCm ? "end" : "middle";

    private static void Dot(IHtmlContentBuilder svg, double atCm, double y, double grams, string kind)
    {
        if (grams > 0)
            svg.AppendHtml($"<circle class=\"{kind}\" cx=\"{N(X(atCm))}\" cy=\"{N(y)}\" r=\"{N(4 * Math.Sqrt(grams))}\"/>");
    }

    // The tip of the triangle is the point; before points down to it, after up.
    private static void Balance(IHtmlContentBuilder svg, double atCm, string kind, int tip, int way) => svg
        .AppendHtml($"<path class=\"balance {kind}\" d=\"M{N(X(atCm))} {tip}l8 {14 * way}h-16z\"/>")
        .AppendHtml($"<text x=\"{N(X(atCm))}\" y=\"{tip + (way > 0 ? 30 : -20)}\" text-anchor=\"middle\">{kind}</text>");

    private static double X(double cm) => Side + (cm * PerCm);

    private static string N(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
