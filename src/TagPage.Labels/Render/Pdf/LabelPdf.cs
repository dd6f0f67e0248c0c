using System.Globalization;
using TagPage.Labels.Layout;
using TagPage.Labels.Printing;
using TagPage.Labels.Text;

namespace TagPage.Labels.Render.Pdf;

/// <summary>
/// Labels as a PDF: pages of exact size, the square as shapes, letters as text of embedded fonts that are cut down to
/// what is used.
/// </summary>
public static class LabelPdf
{
    /// <summary>Writes the pages. The same pages give the same bytes.</summary>
    /// <param name="pages">At least one.</param>
    /// <param name="printed">Told after each page how many are written.</param>
    public static byte[] Of(IEnumerable<PrintPage> pages, Action<int>? printed = null)
    {
        var all = pages.ToList();
        ArgumentOutOfRangeException.ThrowIfZero(all.Count, nameof(pages));
        using var file = new PdfFile();
        var (catalog, tree) = (file.Reserve(), file.Reserve());
        var fonts = Fonts(all);
        var resources = string.Join(' ', fonts.Select(pair => $"/{pair.Value.Name} {pair.Value.Font.Write(file)} 0 R"));
        var kids = new List<int>();
        foreach (var page in all)
        {
            kids.Add(Write(file, page, tree, resources, fonts));
            printed?.Invoke(kids.Count);
        }
        file.Write(tree, $"<< /Type /Pages /Count {kids.Count} /Kids [{string.Join(' ', kids.Select(id => $"{id} 0 R"))}] >>");
        // Printing at true size is what these pages are for (ISO 32000-1, 12.2).
        file.Write(catalog, $"<< /Type /Catalog /Pages {tree} 0 R /ViewerPreferences << /PrintScaling /None >> >>");
        return file.Finish(catalog, file.Write("<< /Title (Labels) /Producer (TagPage) >>"));
    }

    private static int Write(PdfFile file, PrintPage page, int tree, string resources, Dictionary<LabelFont, (string, PdfFont)> fonts)
    {
        var content = file.Reserve();
        file.WriteStream(content, new PdfContent(page, fonts).Draw());
        var (width, height) = (page.WidthMm * PdfContent.PointsPerMm, page.HeightMm * PdfContent.PointsPerMm);
        return file.Write(string.Create(CultureInfo.InvariantCulture,
            $"<< /Type /Page /Parent {tree} 0 R /MediaBox [0 0 {width:0.####} {height:0.####}] /Resources << /Font << {resources} >> >> /Contents {content} 0 R >>"));
    }

    private static Dictionary<LabelFont, (string Name, PdfFont Font)> Fonts(List<PrintPage> pages) => pages
        .SelectMany(page => page.Labels)
        .SelectMany(placed => placed.Label.Pieces.OfType<TextPiece>())
        .SelectMany(piece => piece.RunsPlaced().Select(placed => placed.Run))
        .GroupBy(run => run.Font)
        .Select((group, i) => (group.Key, Name: $"F{i + 1}", Font: new PdfFont(group.Key, [.. group])))
        .ToDictionary(font => font.Key, font => (font.Name, font.Font));
}
