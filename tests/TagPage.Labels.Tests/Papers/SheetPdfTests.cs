using System.Text.RegularExpressions;
using TagPage.Labels.Papers;
using TagPage.Labels.Tests.Cast;
using TagPage.Web.Tests.Cast;

namespace TagPage.Labels.Tests.Papers;

[Long]
public sealed class SheetPdfTests
{
    private static Sheet Bill(int rows) => new()
    {
        Title = "Bill 2026-0007",
        From = ["Ferrygate Racket Bench", "3 Chandler’s Steps", "Eastmere"],
        To = ["Odalys Ferrán, שירה, 佐藤"],
        Facts = [("Number", "2026-0007")],
        Rows = [.. Enumerable.Range(1, rows).SelectMany(i => new[] { new SheetRow($"Ticket {1000 + i}", "") { IsHeading = true }, new SheetRow("labour", $"{i}.50") })],
        Sums = [("Total", "154.51 EUR")],
        Notes = ["Please pay " + string.Concat(Enumerable.Repeat("within the usual time ", 20))],
        Square = TransferQr.Of("DE89370400440532013000", "Ferrygate Racket Bench", 15451, "Bill 2026-0007"),
        SquareWords = ["Scan this with your bank’s app to pay"],
        PageOf = (page, of) => $"page {page} of {of}",
    };

    [Fact]
    public void Everything_on_a_long_bill_can_be_read_on_its_pages()
    {
        var pdf = SheetPdf.Of(Bill(60));
        var text = Text(pdf);

        Assert.Contains("Odalys Ferrán", text, StringComparison.Ordinal);
        Assert.Contains("佐藤", text, StringComparison.Ordinal);
        Assert.All(Enumerable.Range(1, 60), i => Assert.Contains($"{i}.50", text, StringComparison.Ordinal));
        Assert.Contains("154.51 EUR", text, StringComparison.Ordinal);
        var pages = Rasters.OfPdf(pdf, 36).Count;
        Assert.InRange(pages, 3, 8);
        Assert.Equal(Enumerable.Range(1, pages).Select(page => $"page {page} of {pages}"), Regex.Matches(text, @"page \d+ of \d+").Select(m => m.Value));
    }

    /// <summary>The Japanese font alone has 2.4 megabytes.</summary>
    [Fact]
    public void Bill_brings_the_letters_it_shows_and_no_whole_font() => Assert.InRange(SheetPdf.Of(Bill(3)).Length, 10_000, 100_000);

    /// <summary>Chinese and Japanese have no blanks; closing signs never begin a line (Unicode Standard Annex 14, class CL; from memory).</summary>
    [Fact]
    public void Long_lines_without_blanks_stay_on_the_paper()
    {
        var note = string.Concat(Enumerable.Repeat("お振込み先、番号をお書き添えください。", 12));
        var pdf = SheetPdf.Of(Bill(1) with { Notes = [note], Rows = [new SheetRow(note, "1.50")] });

        var lines = Text(pdf).Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0).ToList();
        Assert.Equal(24, string.Concat(lines).Replace("1.50", "", StringComparison.Ordinal).Split("お書き添えください。").Length - 1);
        Assert.All(lines, line => Assert.DoesNotContain(line[0], "、。"));
        var page = Rasters.OfPdf(pdf, 72)[0];
        Assert.All(Enumerable.Range(540, page.Width - 540), x => Assert.All(Enumerable.Range(0, page.Height), y => Assert.True(page.Gray[y * page.Width + x] > 200)));
    }

    [Fact]
    public void Square_on_the_paper_is_read_as_a_phone_would()
    {
        var pages = Rasters.OfPdf(SheetPdf.Of(Bill(2)), 150);

        Assert.Equal(Bill(2).Square!.Payload, Scanner.Look(Assert.Single(pages)));
    }

    [Fact]
    public void Square_never_stands_on_a_page_without_the_total()
    {
        var swiss = TransferQr.OfSwiss(SwissPayee.Of("CH9300762011623852957", "Ferrygate", "", "8004 Zürich", "CH")!, "CHF", 15451, "x", "");
        var places = Enumerable.Range(1, 20).SelectMany(rows => new[] { Bill(rows), Bill(rows) with { Square = swiss } })
            .Select(bill => Text(SheetPdf.Of(bill)).Split('\f').ToList().FindIndex(page => page.Contains("Scan this", StringComparison.Ordinal) && page.Contains("154.51 EUR", StringComparison.Ordinal)));

        Assert.Equal([0, 1], places.Distinct().Order());
    }

    [Fact]
    public void Paper_is_A4()
    {
        var page = Assert.Single(Rasters.OfPdf(SheetPdf.Of(Bill(1)), 72));
        Assert.Equal((595, 842), (page.Width, page.Height));
    }

    private static string Text(byte[] pdf) => Tools.InFolder(folder =>
    {
        File.WriteAllBytes(Path.Combine(folder, "bill.pdf"), pdf);
        return Tools.Run(Tools.Poppler("pdftotext"), folder, "bill.pdf", "-");
    });
}
