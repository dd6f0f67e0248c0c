using TagPage.Labels.Content;
using TagPage.Labels.Layout;
using TagPage.Labels.Printing;
using TagPage.Labels.Render;
using TagPage.Labels.Render.Pdf;
using TagPage.Labels.Tests.Cast;

namespace TagPage.Labels.Tests.Render;

/// <summary>Every square that leaves is read again by ZXing.Net from what was rendered: each tape and resolution not refused.</summary>
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
        var label = Layouter.Lay(ReturnLabel(), Samples.Stock(12, 360) with { FoldGapMm = 20, MaxLengthMm = 160 });
        Assert.Equal(Address, Scanner.Look(Rasters.OfPng(label)));
    }

    private static LabelContent ReturnLabel() => Samples.Purposes.First(purpose => purpose.Name == "return").Content;

    // A phone sees about five pixels a module from 15 cm (common practice). One square after the other is seen turned by
    // up to 15°, at a slant, out of focus and with noise; the rate goes to the test's output.
    [Theory]
    [InlineData("blurred", 0, 0, 1.6, 0)]
    [InlineData("turned by 15°", 15, 0, 0.8, 8)]
    [InlineData("turned by −15°", -15, 0, 0.8, 8)]
    [InlineData("at a slant", 5, 0.35, 0.8, 8)]
    [InlineData("noisy", -5, 0, 0.8, 40)]
    [InlineData("all at once", 15, 0.25, 1.2, 25)]
    public void Nearly_every_square_is_read_as_a_phone_sees_it(string how, double degrees, double slant, double blur, double noise)
    {
        var (read, seen) = (0, 0);
        foreach (var stock in Samples.StocksWithSquare)
        {
            var label = Layouter.Lay(ReturnLabel(), stock);
            for (var seed = 1; seed <= 3; seed++)
            {
                var picture = new Camera(degrees + seed - 2, slant, blur, noise, seed).See(Rasters.OfPng(label), 5.0 / label.Square!.DotsPerModule);
                seen++;
                read += Scanner.Look(picture) == Address ? 1 : 0;
            }
        }
        TestContext.Current.TestOutputHelper!.WriteLine($"{how}: {read} of {seen} read");
        Assert.True(read >= 0.95 * seen, $"{how}: {read} of {seen} read");
    }

    [Fact]
    public void A_camera_that_sees_next_to_nothing_reads_nothing()
    {
        var label = Layouter.Lay(ReturnLabel(), Samples.Stock(12, 180));
        Assert.Null(Scanner.Look(new Camera(0, 0, 12, 0, 1).See(Rasters.OfPng(label), 2.5)));
    }
}
