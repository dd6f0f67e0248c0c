using System.Text;
using TagPage.Labels.Content;
using TagPage.Labels.Geometry;
using TagPage.Labels.Layout;
using TagPage.Labels.Printing;
using TagPage.Labels.Render.Pdf;
using TagPage.Labels.Tests.Cast;
using UglyToad.PdfPig;

namespace TagPage.Labels.Tests.Render;

public class PdfTests
{
    private const double PointsPerMm = 72 / 25.4; // an inch is 25.4 mm exactly; a point is 1/72 inch (ISO 32000-1, 8.3.2.3)

    [Fact]
    public void Pages_are_as_large_as_their_labels_to_a_tenth_of_a_millimetre()
    {
        foreach (var (tape, dpi) in from tape in Tape.Widths from dpi in (int[])[180, 300, 360] select (tape, dpi))
        {
            var labels = Samples.Purposes.Select(purpose => Samples.Lay(purpose.Content, Samples.Stock(tape, dpi))).ToList();
            using var pdf = PdfDocument.Open(LabelPdf.Of(Pages.OneEach(labels)));
            Assert.Equal(labels.Count, pdf.NumberOfPages);
            foreach (var (page, label) in pdf.GetPages().Zip(labels))
            {
                Assert.Equal(tape, page.Height / PointsPerMm, 0.05);
                Assert.Equal(label.LengthMm, page.Width / PointsPerMm, 0.05);
            }
        }
    }

    [Fact]
    public void Text_can_be_selected_in_every_script_that_runs_left_to_right()
    {
        string[] lines = ["Łukasz Ångström", "Δημήτρης", "Дмитрий Щёголев"];
        using var pdf = PdfDocument.Open(LabelPdf.Of(Pages.OneEach([Layouter.Lay(Purposes.Free(lines), Samples.Stock(24, 180)), Layouter.Lay(Purposes.Free(["山田太郎 王小明 髙橋 诸葛"]), Samples.Stock(24, 180))])));
        Assert.All(lines, line => Assert.Contains(line, pdf.GetPage(1).Text, StringComparison.Ordinal));
        Assert.Contains("山田太郎 王小明 髙橋 诸葛", pdf.GetPage(2).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Hebrew_and_Arabic_are_copied_in_the_order_they_are_read()
    {
        var pdf = LabelPdf.Of(Pages.OneEach([Layouter.Lay(Purposes.Free(["דנה", "محمد"]), Samples.Stock(24, 180))]));
        var text = Tools.InFolder(folder =>
        {
            File.WriteAllBytes(Path.Combine(folder, "labels.pdf"), pdf);
            return Tools.Run(Tools.Poppler("pdftotext"), folder, "labels.pdf", "-");
        });
        Assert.Contains("דנה", text, StringComparison.Ordinal);
        Assert.Contains("محمد", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Fonts_are_embedded_and_cut_down_to_what_is_used()
    {
        var pdf = LabelPdf.Of(Pages.OneEach([Layouter.Lay(Purposes.Free(["Ana", "דנה", "محمد", "山田", "诸"]), Samples.Stock(36, 180))]));
        var fonts = Tools.InFolder(folder =>
        {
            File.WriteAllBytes(Path.Combine(folder, "labels.pdf"), pdf);
            return Tools.Run(Tools.Poppler("pdffonts"), folder, "labels.pdf").Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2).ToList();
        });
        Assert.Equal(5, fonts.Count);
        Assert.All(fonts, font => Assert.Matches("^[A-Z]{6}\\+.* yes yes yes ", font)); // embedded, subset, with its text
        Assert.True(pdf.Length < 40_000, $"{pdf.Length} bytes: the whole fonts have four million");
    }

    [Fact]
    public void The_pdf_shows_what_the_printer_prints()
    {
        var labels = Samples.Purposes.Select(purpose => Samples.Lay(purpose.Content, Samples.Stock(24, 360))).ToList();
        var pages = Rasters.OfPdf(LabelPdf.Of(Pages.OneEach(labels)), 360);
        Assert.Equal(labels.Count, pages.Count);
        foreach (var ((name, _), label, theirs) in Samples.Purposes.Zip(labels, pages))
        {
            var mine = Rasters.OfPng(label);
            var (ink, strays) = (mine.Gray.Count(IsInk), Strays(mine, theirs) + Strays(theirs, mine));
            Assert.True(strays < 0.01 * ink, $"{name}: {strays} of {ink} inked dots have no ink near them on the other");
        }
    }

    // Letters are fitted to the dots on one and not on the other: an edge may be a dot off.
    private static int Strays(Bitmap one, Bitmap other)
    {
        return Enumerable.Range(0, one.Gray.Length).Count(i => IsInk(one.Gray[i]) && !IsNear(i % one.Width, i / one.Width));

        bool IsNear(int x, int y) => (from row in Enumerable.Range(y - 1, 3)
                                      from column in Enumerable.Range(x - 1, 3)
                                      where row >= 0 && column >= 0 && row < other.Height && column < other.Width
                                      select IsInk(other.Gray[row * other.Width + column])).Any(inked => inked);
    }

    private static bool IsInk(byte gray) => gray < 128;

    [Fact]
    public void The_same_labels_are_the_same_bytes_again()
    {
        var labels = Samples.Purposes.Select(purpose => Samples.Lay(purpose.Content, LabelStock.Usual)).ToList();
        Assert.Equal(LabelPdf.Of(Pages.OneEach(labels)), LabelPdf.Of(Pages.OneEach(labels)));
    }

    [Fact]
    public void The_square_is_drawn_as_shapes_and_no_picture_is_in_the_file()
    {
        var pdf = LabelPdf.Of(Pages.OneEach([Samples.Lay(Samples.Purposes[0].Content, LabelStock.Usual)]));
        Assert.DoesNotContain("/Image", Encoding.Latin1.GetString(pdf), StringComparison.Ordinal);
        using var read = PdfDocument.Open(pdf);
        Assert.NotEmpty(read.GetPage(1).Paths);
    }

    // What the printer prints is right by the decoder; the PDF must have the same modules at the same places, to a twentieth of a dot.
    [Fact]
    public void Every_module_of_the_square_is_where_the_layout_put_it()
    {
        foreach (var stock in Samples.StocksWithSquare)
        {
            var label = Samples.Lay(Samples.Of("blank"), stock);
            var (square, dot) = (label.Pieces.OfType<SquarePiece>().Single(), stock.Printer.DotMm * PointsPerMm);
            using var pdf = PdfDocument.Open(LabelPdf.Of(Pages.OneEach([label])));
            var page = pdf.GetPage(1);
            var drawn = page.Paths.SelectMany(path => path).Select(part => part.GetBoundingRectangle()!.Value)
                .Select(box => (Left: box.Left / dot, Top: (page.Height - box.Top) / dot, Width: box.Width / dot, Height: box.Height / dot)).ToList();
            var dark = 0;
            foreach (var (left, top, width, height) in drawn)
            {
                var (column, row) = ((left - square.X) / square.DotsPerModule, (top - square.Y) / square.DotsPerModule);
                Assert.Equal(Math.Round(column), column, 0.05 / square.DotsPerModule);
                Assert.Equal(Math.Round(row), row, 0.05 / square.DotsPerModule);
                Assert.Equal(square.DotsPerModule, height, 0.05);
                for (var i = 0; i < (int)Math.Round(width / square.DotsPerModule); i++, dark++)
                    Assert.True(square.Qr.IsDark((int)Math.Round(column) + i, (int)Math.Round(row)));
            }
            Assert.Equal(Enumerable.Range(0, 625).Count(i => square.Qr.IsDark(i % 25, i / 25)), dark);
        }
    }
}
