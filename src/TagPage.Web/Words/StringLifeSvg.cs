using System.Globalization;
using System.Text;
using Microsoft.AspNetCore.Html;
using TagPage.Core.Forecast;

namespace TagPage.Web.Words;

/// <summary>
/// String life drawn as the bed of a racket lying on the bench: good mains are solid, used-up ones hairlines from the
/// outside in, the crosses and the hoop faint. Drawn in the text's colour, in any size.
/// </summary>
public static class StringLifeSvg
{
    private const double Width = 320, Height = 112, HoopX = 157, HoopY = 53;

    /// <summary>The outermost mains stand at this part of the half width.</summary>
    private const double Spread = .89;

    private const int Crosses = 7;

    /// <param name="mains">Strokes to draw, at most <see cref="StringLife.MostStrokes"/>.</param>
    /// <param name="lifeLeft">0 to 1, or null for a hoop without strings.</param>
    /// <param name="words">Says the same to those who cannot see it.</param>
    public static IHtmlContent Draw(int mains, double? lifeLeft, string words)
    {
        var svg = new HtmlContentBuilder()
            .AppendHtml($"<svg class=\"life\" viewBox=\"0 0 {Width} {Height}\" role=\"img\" aria-label=\"").Append(words).AppendHtml("\">")
            .AppendHtml($"<ellipse cx=\"{Width / 2}\" cy=\"{Height / 2}\" rx=\"{HoopX}\" ry=\"{HoopY}\"/>");
        if (lifeLeft is { } left)
            svg.AppendHtml(Bed(mains, left));
        return svg.AppendHtml("</svg>");
    }

    private static string Bed(int mains, double left)
    {
        var (good, used) = (new StringBuilder(), new StringBuilder());
        var strokes = StringLife.Good(mains, left);
        for (var i = 0; i < mains; i++)
            Stroke(strokes[i] ? good : used, mains == 1 ? 0 : Spread * (2.0 * i / (mains - 1) - 1));
        return CrossPath() + Path("used", used) + Path("good", good, $" stroke-width=\"{Number(Math.Clamp(64.0 / mains, 1.5, 4))}\"");
    }

    /// <param name="path">Gets the stroke.</param>
    /// <param name="at">From -1 at the left end of the hoop to 1 at the right.</param>
    private static void Stroke(StringBuilder path, double at)
    {
        var half = (HoopY - 4) * Math.Sqrt(1 - at * at);
        path.Append(CultureInfo.InvariantCulture, $"M{Number(Width / 2 + HoopX * at)} {Number(Height / 2 - half)}v{Number(2 * half)}");
    }

    private static string CrossPath()
    {
        var path = new StringBuilder();
        for (var i = 1; i <= Crosses; i++)
        {
            var at = 2.0 * i / (Crosses + 1) - 1;
            var half = (HoopX - 4) * Math.Sqrt(1 - at * at);
            path.Append(CultureInfo.InvariantCulture, $"M{Number(Width / 2 - half)} {Number(Height / 2 + HoopY * at)}h{Number(2 * half)}");
        }
        return Path("crosses", path);
    }

    private static string Path(string name, StringBuilder path, string attributes = "") =>
        path.Length == 0 ? "" : $"<path class=\"{name}\"{attributes} d=\"{path}\"/>";

    private static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
