using TagPage.Labels.Layout;
using TagPage.Labels.Printing;
using TagPage.Labels.Render;
using TagPage.Labels.Render.Pdf;
using TagPage.Labels.Tests.Cast;
using TagPage.Web.Tests.Cast;

namespace TagPage.Labels.Tests.Render;

/// <summary>Every square that leaves is read again by ZXing.Net from what was rendered: each tape and resolution not refused.</summary>
[Long]
public class DecodedTests
{
    private const string Address = "HTTPS://TAG.EXAMPLE/T/7K2M9Q4TXAV";

    private static List<LaidLabel> Labels(LabelStock stock) =>
        [.. Samples.Purposes.Where(purpose => purpose.Content.Tag is not null).Select(purpose => Samples.Lay(purpose.Content, stock))];

    [Fact]
    public void Squares_are_carried_by_every_tape_from_12_mm_and_by_9_mm_at_300_dots() =>
        Assert.Equal([(9, 300), .. from tape in (int[])[12, 18, 24, 36] from dpi in (int[])[180, 300, 360] select (tape, dpi)],
            Samples.StocksWithSquare.Select(stock => ((int)stock.Tape.WidthMm, stock.Printer.Dpi)));

    [Fact]
    public void Every_square_is_read_from_the_png()
    {
        foreach (var label in Samples.StocksWithSquare.SelectMany(Labels))
            Assert.Equal(Address, Scanner.Look(Rasters.OfPng(label)));
    }

    [Fact]
    public void Every_square_is_read_from_the_pdf_as_poppler_draws_it()
    {
        foreach (var stocks in Samples.StocksWithSquare.GroupBy(stock => stock.Printer.Dpi))
        {
            var labels = stocks.SelectMany(Labels).ToList();
            var pages = Rasters.OfPdf(LabelPdf.Of(Pages.OneEach(labels)), stocks.Key);
            Assert.Equal(labels.Count, pages.Count);
            Assert.All(pages, page => Assert.Equal(Address, Scanner.Look(page)));
        }
    }

    [Fact]
    public void Every_square_is_read_from_the_svg_as_chromium_draws_it()
    {
        foreach (var stocks in Samples.StocksWithSquare.Chunk(4))
        {
            var svgs = stocks.SelectMany(Labels).Select(label => LabelSvg.Of(label, "Label")).ToList();
            Assert.All(Rasters.OfSvg(svgs), picture => Assert.Equal(Address, Scanner.Look(picture)));
        }
    }

    [Fact]
    public void The_square_of_a_folded_label_is_read()
    {
        var label = Layouter.Lay(Samples.Of("return"), Samples.Stock(12, 360) with { FoldGapMm = 20, MaxLengthMm = 160 });
        Assert.Equal(Address, Scanner.Look(Rasters.OfPng(label)));
    }
}
