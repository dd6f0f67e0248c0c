using System.Globalization;
using System.Net;
using System.Text;

namespace TagPage.Labels;

/// <summary>A tag's QR as vector graphics, for pages and previews.</summary>
public static class TagQrSvg
{
    /// <summary>
    /// One svg element with the quiet zone and a light ground, so that it also scans on a dark page.
    /// Measured in modules; its size comes from where it is placed.
    /// </summary>
    /// <param name="qr">The symbol.</param>
    /// <param name="title">What a screen reader says, such as "QR of this racket’s page".</param>
    public static string ToSvg(this TagQr qr, string title)
    {
        var side = qr.Modules + 2 * TagQr.QuietZone;
        return $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {side} {side}\" role=\"img\" shape-rendering=\"crispEdges\">"
            + $"<title>{WebUtility.HtmlEncode(title)}</title>"
            + $"<path fill=\"#fff\" d=\"M0 0h{side}v{side}H0z\"/>"
            + $"<path d=\"{Runs(qr)}\"/></svg>";
    }

    private static string Runs(TagQr qr)
    {
        var path = new StringBuilder();
        for (var row = 0; row < qr.Modules; row++)
        {
            for (var column = 0; column < qr.Modules; column++)
            {
                var start = column;
                while (qr.IsDark(column, row))
                    column++;
                if (column > start)
                    AppendRun(path, start, row, column - start);
            }
        }
        return path.ToString();
    }

    private static void AppendRun(StringBuilder path, int column, int row, int length) =>
        path.Append(CultureInfo.InvariantCulture,
            $"M{column + TagQr.QuietZone} {row + TagQr.QuietZone}h{length}v1h-{length}z");
}
