using TagPage.Labels.Layout;
using TagPage.Labels.Printing;
using TagPage.Labels.Render;
using TagPage.Labels.Render.Pdf;
using TagPage.Labels.Tests.Cast;
using UglyToad.PdfPig;

namespace TagPage.Labels.Tests.Render;

public class PagesTests
{
    private static readonly SheetPlan Plan = new(Paper.A4, 3, 8, 60, 24) { LeftMm = 10, TopMm = 15, PitchXMm = 64, PitchYMm = 33 };

    private static List<LaidLabel> Some(int count) =>
        [.. Enumerable.Repeat(Layouter.Lay(Samples.Purposes[0].Content, LabelStock.Usual with { MaxLengthMm = 60 }), count)];

    [Fact]
    public void A_strip_is_as_long_as_its_labels_with_cut_marks_between_them()
    {
        var labels = Some(3);
        var strip = Assert.Single(Pages.Strip(labels));
        Assert.Equal(labels.Sum(label => label.LengthMm), strip.WidthMm, 9);
        Assert.Equal(4, strip.Marks.Count);
        Assert.All(strip.Marks.Take(2), mark => Assert.Equal(labels[0].LengthMm, mark.XMm + mark.WidthMm / 2, 9));
    }

    [Fact]
    public void A_strip_longer_than_a_pdf_page_goes_on_on_the_next_page()
    {
        var strips = Pages.Strip(Some(300)).ToList();
        Assert.True(strips.Count > 1);
        Assert.Equal(300, strips.Sum(strip => strip.Labels.Count));
        using var pdf = PdfDocument.Open(LabelPdf.Of(strips));
        Assert.All(pdf.GetPages(), page => Assert.True(page.Width <= 14_400)); // ISO 32000-1, annex C
    }

    [Fact]
    public void A_sheet_is_filled_row_by_row_from_the_first_free_place()
    {
        var pages = Plan.Pages(Some(30), firstFree: 23).ToList();
        Assert.Equal([2, 24, 4], pages.Select(page => page.Labels.Count));
        Assert.Equal((10 + 64, 15 + 7 * 33), (pages[0].Labels[0].XMm, pages[0].Labels[0].YMm)); // place 23: last row, second column
        Assert.Equal((10, 15), (pages[1].Labels[0].XMm, pages[1].Labels[0].YMm));
        using var pdf = PdfDocument.Open(LabelPdf.Of(pages));
        Assert.Equal((210 * 72 / 25.4, 297 * 72 / 25.4), (pdf.GetPage(1).Width, pdf.GetPage(1).Height), Near);
        Assert.Throws<ArgumentOutOfRangeException>(() => Plan.Pages(Some(1), 25).ToList());
    }

    private static bool Near((double, double) one, (double, double) other) =>
        Math.Abs(one.Item1 - other.Item1) < 0.01 && Math.Abs(one.Item2 - other.Item2) < 0.01;

    [Theory]
    [InlineData(3, 8, 64, 33, true)]
    [InlineData(4, 8, 64, 33, false)] // a fourth column would reach past the paper
    [InlineData(3, 10, 64, 33, false)]
    [InlineData(3, 8, 50, 33, false)] // labels would lie on each other
    [InlineData(0, 8, 64, 33, false)]
    public void A_plan_that_cannot_be_says_so(int columns, int rows, double pitchX, double pitchY, bool fits) =>
        Assert.Equal(fits, (Plan with { Columns = columns, Rows = rows, PitchXMm = pitchX, PitchYMm = pitchY }).Fault() is null);

    [Fact]
    public void The_test_page_measures_true()
    {
        var page = Rasters.OfPdf(LabelPdf.Of([TestPages.On(Paper.A4)]), 254)[0]; // ten dots a millimetre
        Assert.Equal((2100, 2970), (page.Width, page.Height), (a, b) => Math.Abs(a.Item1 - b.Item1) <= 1 && Math.Abs(a.Item2 - b.Item2) <= 1);
        var row = Enumerable.Range(0, page.Width).Where(x => page.Gray[550 * page.Width + x] < 128).ToList();
        Assert.Equal(500, row[^1] - row[0] + 1, 2.0); // the square, through its middle
        var scale = Enumerable.Range(0, page.Width).Where(x => page.Gray[1001 * page.Width + x] < 128).ToList();
        Assert.Equal(1500, scale[^1] - scale[0] + 1, 2.0);
    }

    [Fact]
    public void The_test_page_of_a_tape_is_as_high_as_the_tape()
    {
        using var pdf = PdfDocument.Open(LabelPdf.Of([TestPages.On(Samples.Stock(12, 180))]));
        Assert.Equal(12 * 72 / 25.4, pdf.GetPage(1).Height, 0.01);
    }

    [Fact]
    public void The_png_is_of_the_printers_dots_and_says_so()
    {
        foreach (var dpi in (int[])[180, 300, 360])
        {
            var label = Samples.Lay(Samples.Purposes[0].Content, Samples.Stock(12, dpi));
            var png = Png.Of(LabelDots.Of(label), dpi);
            var perMetre = (int)Math.Round(dpi / 0.0254);
            Assert.Equal((perMetre, perMetre), PngReader.PerMetre(png));
            Assert.Equal((label.LengthDots, (int)Math.Round(12 * dpi / 25.4)), (PngReader.Read(png).Width, PngReader.Read(png).Height));
        }
    }
}
