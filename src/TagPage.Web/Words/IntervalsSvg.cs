using System.Globalization;
using Microsoft.AspNetCore.Html;
using TagPage.Core.Jobs;

namespace TagPage.Web.Words;

/// <summary>
/// How long a player's strings stayed in, one bar for each stringing, and how they ended: a cross for a break by wear, a
/// stroke for strings cut out unbroken, a ring for any other end, an open end for those still in.
/// </summary>
public static class IntervalsSvg
{
    private const double Width = 360, Left = 92, Right = 350, RowHeight = 16;

    /// <summary>The newest that are drawn; a table beside it can list more.</summary>
    public const int MostBars = 24;

    /// <param name="Label">Names the stringing.</param>
    /// <param name="From">Strung on.</param>
    /// <param name="To">Came out on; null while they are in.</param>
    /// <param name="Ended">How; null while they are in or when nobody noted it.</param>
    public sealed record Bar(string Label, DateOnly From, DateOnly? To, BedEnd? Ended);

    /// <param name="bars">In the order to draw them, from the top.</param>
    /// <param name="today">Where the open ones end.</param>
    /// <param name="words">Says the same to those who cannot see it.</param>
    public static IHtmlContent Draw(IReadOnlyList<Bar> bars, DateOnly today, string words)
    {
        var shown = bars.Take(MostBars).ToList();
        var height = (shown.Count * RowHeight) + 8;
        var svg = new HtmlContentBuilder()
            .AppendHtml($"<svg class=\"intervals\" viewBox=\"0 0 {Width} {N(height)}\" role=\"img\" aria-label=\"").Append(words).AppendHtml("\">");
        if (shown.Count == 0)
            return svg.AppendHtml("</svg>");
        var first = shown.Min(b => b.From).DayNumber;
        var days = Math.Max(1, today.DayNumber - first);
        for (var i = 0; i < shown.Count; i++)
        {
            var (bar, y) = (shown[i], (i * RowHeight) + 12);
            var (x1, x2) = (X(bar.From), X(bar.To ?? today));
            svg.AppendHtml($"<text x=\"{Left - 8}\" y=\"{N(y + 4)}\" text-anchor=\"end\">").Append(bar.Label).AppendHtml("</text>")
                .AppendHtml($"<path class=\"bar\" d=\"M{N(x1)} {N(y)}L{N(x2)} {N(y)}\"/>").AppendHtml(End(bar, x2, y));
        }
        return svg.AppendHtml("</svg>");

        double X(DateOnly day) => Left + ((Right - Left) * Math.Clamp((day.DayNumber - first) / (double)days, 0, 1));
    }

    private static string End(Bar bar, double x, double y) => bar switch
    {
        { To: null } => "",
        { Ended: BedEnd.Wear } => $"<path class=\"wear\" d=\"M{N(x - 4)} {N(y - 4)}l8 8m0-8l-8 8\"/>",
        { Ended: BedEnd.CutOut } => $"<path class=\"cut\" d=\"M{N(x)} {N(y - 5)}v10\"/>",
        _ => $"<circle class=\"other\" cx=\"{N(x)}\" cy=\"{N(y)}\" r=\"3.5\"/>",
    };

    private static string N(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
