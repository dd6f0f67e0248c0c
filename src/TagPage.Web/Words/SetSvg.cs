using System.Globalization;
using Microsoft.AspNetCore.Html;
using TagPage.Core.Customising;

namespace TagPage.Web.Words;

/// <summary>A line for each figure of a set: a dot for each frame with what measuring leaves open, and the target. Before and after a plan share one scale.</summary>
public static class SetSvg
{
    private const int Left = 120, Right = 560, Row = 70, Width = 680;

    public static IHtmlContent Before(SetDrawing set) => Draw(set, figure => figure.Before, "before");

    public static IHtmlContent After(SetDrawing set) => Draw(set, figure => figure.After!, "after");

    private static HtmlContentBuilder Draw(SetDrawing set, Func<SetDrawing.Figure, IReadOnlyList<Uncertain>> values, string when)
    {
        var svg = new HtmlContentBuilder();
        svg.AppendHtml($"<svg class=\"set-picture {when}\" viewBox=\"0 0 {Width} {set.Figures.Count * Row}\" role=\"img\" aria-label=\"").Append(Says(set, values)).AppendHtml("\">");
        for (var i = 0; i < set.Figures.Count; i++)
            Line(svg, set, set.Figures[i], values(set.Figures[i]), (i * Row) + (Row / 2));
        svg.AppendHtml("</svg>");
        return svg;
    }

    private static string Says(SetDrawing set, Func<SetDrawing.Figure, IReadOnlyList<Uncertain>> values) => string.Join(". ", set.Figures.Select(figure =>
        $"{figure.Name}: {SpecWords.Number(values(figure).Max(v => v.Value) - values(figure).Min(v => v.Value), figure.Decimals)} {figure.Unit} apart"));

    private static void Line(HtmlContentBuilder svg, SetDrawing set, SetDrawing.Figure figure, IReadOnlyList<Uncertain> values, int y)
    {
        // Never so wide that a difference nobody can measure fills the picture.
        Uncertain[] all = [.. figure.Before, .. figure.After ?? []];
        var off = all.Max(value => value.Off);
        var low = Math.Min(all.Min(value => value.Value), figure.Target ?? double.MaxValue) - (2 * off);
        var high = Math.Max(all.Max(value => value.Value), figure.Target ?? double.MinValue) + (2 * off);
        double X(double value) => Left + ((value - low) / (high - low) * (Right - Left));
        Text(svg, 0, y + 5, "start", figure.Name);
        svg.AppendHtml($"<path d=\"M{Left} {y}H{Right}\"/>");
        Text(svg, Left - 6, y + 24, "start", SpecWords.Number(low, figure.Decimals));
        Text(svg, Right + 6, y + 24, "end", $"{SpecWords.Number(high, figure.Decimals)} {figure.Unit}");
        if (figure.Target is { } target)
            svg.AppendHtml($"<path class=\"target\" d=\"M{N(X(target))} {y - 24}V{y + 14}\"/>");
        foreach (var value in values)
            svg.AppendHtml($"<path class=\"open\" d=\"M{N(X(value.Value - value.Off))} {y}H{N(X(value.Value + value.Off))}\"/><circle cx=\"{N(X(value.Value))}\" cy=\"{y}\" r=\"5\"/>");
        foreach (var (x, numbers) in Apart(set.Numbers.Zip(values.Select(value => X(value.Value)))))
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

    private static void Text(HtmlContentBuilder svg, double x, double y, string anchor, string text) =>
        svg.AppendHtml($"<text x=\"{N(x)}\" y=\"{N(y)}\" text-anchor=\"{anchor}\">").Append(text).AppendHtml("</text>");

    private static string N(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
