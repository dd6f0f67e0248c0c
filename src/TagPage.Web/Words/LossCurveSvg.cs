using System.Globalization;
using System.Text;
using Microsoft.AspNetCore.Html;
using TagPage.Core.Forecast;

namespace TagPage.Web.Words;

/// <summary>
/// The tension that is left in a bed, drawn from the day it was strung: what is expected, the range that holds 80 %,
/// readings as dots (hollow where they are doubtful), the threshold, today and the due day. Drawn in the text's colour, in any size.
/// </summary>
public static class LossCurveSvg
{
    private const int MostPoints = 40;

    /// <param name="picture">What to draw.</param>
    /// <param name="words">Its labels.</param>
    public static IHtmlContent Draw(LossPicture picture, LossPictureWords words)
    {
        var frame = new LossFrame(picture);
        var svg = new HtmlContentBuilder()
            .AppendHtml($"<svg class=\"loss\" viewBox=\"0 0 {LossFrame.Width} {LossFrame.Height}\" role=\"img\" aria-label=\"").Append(words.Says).AppendHtml("\">");
        foreach (var percent in frame.Marks)
            Label(svg.AppendHtml(Rule("grid", LossFrame.Left, frame.Y(100 - percent), LossFrame.Right, frame.Y(100 - percent))),
                LossFrame.Left - 6, frame.Y(100 - percent) + 4, "end", $"{percent} %");
        var points = picture.Curve.Points(frame.LastDay, MostPoints);
        svg.AppendHtml($"<path class=\"range\" d=\"{Band(frame, points)}\"/>")
            .AppendHtml($"<path class=\"expected\" d=\"M{Line(frame, points, p => p.Expected)}\"/>");
        var threshold = frame.Y(picture.Curve.Threshold);
        svg.AppendHtml(Rule("threshold", LossFrame.Left, threshold, LossFrame.Right, threshold));
        // On the left the curve is still far above.
        Label(svg, LossFrame.Left + 4, threshold - 5, "start", words.Threshold);
        Upright(svg, frame, picture.Today, "today", words.Today, 12);
        if (picture.Due is { } due)
            Upright(svg, frame, due, "due", words.Due, LossFrame.Height - 4);
        Dots(svg, frame, picture.Readings, "reading");
        Dots(svg, frame, picture.Doubtful, "reading doubtful");
        return svg.AppendHtml("</svg>");
    }

    private static void Dots(IHtmlContentBuilder svg, LossFrame frame, IEnumerable<(DateOnly Day, double Loss)> readings, string kind)
    {
        foreach (var (day, loss) in readings)
            svg.AppendHtml($"<circle class=\"{kind}\" cx=\"{N(frame.X(day))}\" cy=\"{N(Math.Clamp(frame.Y(loss), LossFrame.Top, LossFrame.Bottom))}\" r=\"4\"/>");
    }

    /// <summary>A label stands beside its line, on the side where there is room.</summary>
    private static void Upright(IHtmlContentBuilder svg, LossFrame frame, DateOnly day, string kind, string label, double at)
    {
        var x = frame.X(day);
        svg.AppendHtml(Rule(kind, x, LossFrame.Top, x, LossFrame.Bottom));
        var left = x > (LossFrame.Left + LossFrame.Right) / 2;
        Label(svg, left ? x + 2 : x - 2, at, left ? "end" : "start", label);
    }

    private static string Band(LossFrame frame, IReadOnlyList<LossPoint> points) =>
        $"M{Line(frame, points, p => p.Low)}L{Line(frame, points.Reverse(), p => p.High)}Z";

    private static string Line(LossFrame frame, IEnumerable<LossPoint> points, Func<LossPoint, double> loss)
    {
        var path = new StringBuilder();
        foreach (var point in points)
            path.Append(path.Length == 0 ? "" : "L").Append(N(frame.X(point.Day))).Append(' ').Append(N(frame.Y(loss(point))));
        return path.ToString();
    }

    private static string Rule(string kind, double x1, double y1, double x2, double y2) => $"<path class=\"{kind}\" d=\"M{N(x1)} {N(y1)}L{N(x2)} {N(y2)}\"/>";

    private static void Label(IHtmlContentBuilder svg, double x, double y, string anchor, string text) =>
        svg.AppendHtml($"<text x=\"{N(x)}\" y=\"{N(y)}\" text-anchor=\"{anchor}\">").Append(text).AppendHtml("</text>");

    private static string N(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
