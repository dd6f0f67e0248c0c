using System.Globalization;
using Microsoft.AspNetCore.Html;
using TagPage.Core.Forecast;

namespace TagPage.Web.Words;

/// <summary>
/// The tension that is left, small enough for a public page: what is expected, the range that holds 80 %, the threshold and
/// today. In whole units and without letters: every byte goes over the air.
/// </summary>
public static class SmallLossSvg
{
    private const int Width = 320, Height = 72, MostPoints = 14, Edge = 5;

    public static IHtmlContent Draw(LossPicture picture, string words)
    {
        var frame = new LossFrame(picture);
        var points = picture.Curve.Points(frame.LastDay, MostPoints);
        return new HtmlContentBuilder()
            .AppendHtml($"<svg class=\"drop\" viewBox=\"0 0 {Width} {Height}\" role=\"img\" aria-label=\"").Append(words).AppendHtml("\">")
            .AppendHtml($"<path class=\"range\" d=\"M{Line(frame, points, p => p.Low)}L{Line(frame, points.Reverse(), p => p.High)}Z\"/>")
            .AppendHtml($"<path class=\"threshold\" d=\"M0 {Y(frame, picture.Curve.Threshold)}H{Width}\"/>")
            .AppendHtml($"<path d=\"M{Line(frame, points, p => p.Expected)}\"/>")
            .AppendHtml($"<circle cx=\"{X(frame, picture.Today)}\" cy=\"{Y(frame, picture.Curve.On(picture.Today).Expected)}\" r=\"{Edge}\"/></svg>");
    }

    private static string Line(LossFrame frame, IEnumerable<LossPoint> points, Func<LossPoint, double> loss) =>
        string.Join('L', points.Select(p => $"{X(frame, p.Day)} {Y(frame, loss(p))}"));

    private static string X(LossFrame frame, DateOnly day) => Whole((frame.X(day) - LossFrame.Left) / (LossFrame.Right - LossFrame.Left) * Width);

    private static string Y(LossFrame frame, double loss) =>
        Whole(Edge + ((frame.Y(loss) - LossFrame.Top) / (LossFrame.Bottom - LossFrame.Top) * (Height - (2 * Edge))));

    private static string Whole(double value) => Math.Round(value).ToString("0", CultureInfo.InvariantCulture);
}
