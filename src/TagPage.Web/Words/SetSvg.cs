using System.Globalization;
using Microsoft.AspNetCore.Html;

namespace TagPage.Web.Words;

/// <summary>A line for each figure of a set: a dot for each frame with what measuring leaves open, and the target.</summary>
public static class SetSvg
{
    private const int Left = 120, Right = 560, Row = 70, Width = 680;

    public static IHtmlContent Draw(SetDrawing set)
    {
        var svg = new HtmlContentBuilder()
            .AppendHtml($"<svg class=\"set-picture\" viewBox=\"0 0 {Width} {set.Figures.Count * Row}\" role=\"img\" aria-label=\"").Append(Says(set)).AppendHtml("\">");
        for (var i = 0; i < set.Figures.Count; i++)
            Line(svg, set, set.Figures[i], (i * Row) + (Row / 2));
        return svg.AppendHtml("</svg>");
    }

    private static string Says(SetDrawing set) => string.Join(". ", set.Figures.Select(figure =>
        $"{figure.Name}: {SpecWords.Number(figure.Spread.Apart, figure.Decimals)} {figure.Unit} apart"));

    private static void Line(IHtmlContentBuilder svg, SetDrawing set, SetDrawing.Figure figure, int y)
    {
        // Never so wide that a difference nobody can measure fills the picture.
        var low = Math.Min(figure.Spread.Least, figure.Target ?? figure.Spread.Least) - (2 * figure.Spread.Off);
        var high = Math.Max(figure.Spread.Most, figure.Target ?? figure.Spread.Most) + (2 * figure.Spread.Off);
        double X(double value) => Left + ((value - low) / (high - low) * (Right - Left));
        Text(svg, 0, y + 5, "start", figure.Name);
        svg.AppendHtml($"<path d=\"M{Left} {y}H{Right}\"/>");
        Text(svg, Left - 6, y + 24, "start", SpecWords.Number(low, figure.Decimals));
        Text(svg, Right + 6, y + 24, "end", $"{SpecWords.Number(high, figure.Decimals)} {figure.Unit}");
        if (figure.Target is { } target)
            svg.AppendHtml($"<path class=\"target\" d=\"M{N(X(target))} {y - 24}V{y + 14}\"/>");
        for (var i = 0; i < figure.Values.Count; i++)
        {
            var open = figure.Spread.Off;
            svg.AppendHtml($"<path class=\"open\" d=\"M{N(X(figure.Values[i] - open))} {y}H{N(X(figure.Values[i] + open))}\"/><circle cx=\"{N(X(figure.Values[i]))}\" cy=\"{y}\" r=\"5\"/>");
        }
        foreach (var (x, numbers) in Apart(set.Numbers.Zip(figure.Values.Select(X))))
            Text(svg, x, y - 9, "middle", numbers);
    }

    // Neighbours that would print over each other share one text, from left to right.
    private static List<(double X, string Numbers)> Apart(IEnumerable<(int Number, double X)> frames)
    {
        List<(double X, string Numbers)> texts = [];
        foreach (var (number, x) in frames.OrderBy(frame => frame.X))
        {
            var own = number.ToString(CultureInfo.InvariantCulture);
            if (texts is [.., var (lastX, last)] && x - lastX < 8 + (4 * (last.Length + own.Length)))
                texts[^1] = ((lastX + x) / 2, $"{last}, {own}");
            else
                texts.Add((x, own));
        }
        return texts;
    }

    private static void Text(IHtmlContentBuilder svg, double x, double y, string anchor, string text) =>
        svg.AppendHtml($"<text x=\"{N(x)}\" y=\"{N(y)}\" text-anchor=\"{anchor}\">").Append(text).AppendHtml("</text>");

    private static string N(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
