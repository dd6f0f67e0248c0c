using System.Globalization;
using System.Text;
using QRCoder;

namespace TagPage.Web.Labels;

/// <summary>The QR of a private link. Its token is case-sensitive, so it cannot use the dense mode of a tag's QR.</summary>
public static class LinkSquare
{
    /// <param name="link">An address.</param>
    /// <param name="label">What a screen reader says; it holds no markup.</param>
    public static string Svg(string link, string label)
    {
        using var qr = QRCodeGenerator.GenerateQrCode(link, QRCodeGenerator.ECCLevel.M);
        var rows = qr.ModuleMatrix;
        var path = new StringBuilder();
        for (var y = 0; y < rows.Count; y++)
            for (var x = 0; x < rows[y].Count; x++)
                if (rows[y][x])
                    path.Append(CultureInfo.InvariantCulture, $"M{x} {y}h1v1h-1z");
        return string.Create(CultureInfo.InvariantCulture,
            $"""<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {rows.Count} {rows.Count}" role="img" aria-label="{label}" shape-rendering="crispEdges"><rect width="{rows.Count}" height="{rows.Count}" fill="#fff"/><path d="{path}" fill="#000"/></svg>""");
    }
}
