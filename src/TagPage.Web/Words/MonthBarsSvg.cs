using System.Globalization;
using Microsoft.AspNetCore.Html;

namespace TagPage.Web.Words;

/// <summary>Twelve bars, January to December, each with its figure above it; the page has the same in a table.</summary>
public static class MonthBarsSvg
{
    private const int Width = 540, Height = 160, Top = 20, Bottom = 136, Step = Width / 12;

    /// <param name="values">One a month; below zero nothing is drawn.</param>
    /// <param name="shown">Each as it is written.</param>
    /// <param name="says">What a screen reader says.</param>
    public static IHtmlContent Draw(IReadOnlyList<long> values, Func<long, string> shown, string says)
    {
        var most = Math.Max(1, values.Max());
        var svg = new HtmlContentBuilder().AppendHtml($"<svg class=\"bars\" viewBox=\"0 0 {Width} {Height}\" role=\"img\" aria-label=\"").Append(says).AppendHtml("\">");
        for (var i = 0; i < values.Count; i++)
        {
            var tall = (Bottom - Top) * Math.Max(0, values[i]) / most;
            svg.AppendHtml(F($"<rect x=\"{i * Step + 6}\" y=\"{Bottom - tall}\" width=\"{Step - 12}\" height=\"{tall}\"/>"));
            if (values[i] != 0)
                svg.AppendHtml(F($"<text x=\"{i * Step + Step / 2}\" y=\"{Bottom - tall - 5}\">")).Append(shown(values[i])).AppendHtml("</text>");
            svg.AppendHtml(F($"<text x=\"{i * Step + Step / 2}\" y=\"{Height - 6}\">")).Append(Name(i + 1)).AppendHtml("</text>");
        }
        return svg.AppendHtml(F($"<path d=\"M0 {Bottom}H{Width}\"/></svg>"));
    }

    public static string Name(int month) => CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedMonthName(month);

    private static string F(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
