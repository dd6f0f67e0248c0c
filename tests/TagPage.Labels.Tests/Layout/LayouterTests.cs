using TagPage.Core.Colour;
using TagPage.Labels.Content;
using TagPage.Labels.Geometry;
using TagPage.Labels.Layout;
using TagPage.Labels.Tests.Cast;

namespace TagPage.Labels.Tests.Layout;

public class LayouterTests
{
    [Fact]
    public void Every_purpose_stays_inside_the_printable_part_of_every_tape_and_its_type_is_never_under_5_points()
    {
        foreach (var (tape, dpi) in from tape in Tape.Widths from dpi in (int[])[180, 300, 360] select (tape, dpi))
        {
            var stock = Samples.Stock(tape, dpi);
            foreach (var (name, content) in Samples.Purposes)
            {
                var label = Samples.Lay(content, stock);
                Assert.True(label.LengthMm <= stock.MaxLengthMm, $"{name} on {tape} mm is {label.LengthMm} mm long");
                Assert.NotEmpty(label.Pieces);
                Assert.All(label.Pieces.OfType<TextPiece>(), piece => AssertInside(piece, label, name));
                Assert.All(label.Pieces.OfType<SquarePiece>(), piece => AssertInside(piece, label));
            }
        }
    }

    private static void AssertInside(TextPiece piece, LaidLabel label, string name)
    {
        var (printer, tape) = (label.Stock.Printer, label.Stock.Tape.WidthMm);
        var first = printer.FirstDot(tape);
        Assert.True(piece.Size >= printer.PointsToDots(5) - 0.01, $"{name} on {tape} mm: {piece.Text.Text}");
        Assert.InRange(piece.Baseline - piece.Text.InkUp(piece.Size), first, label.HeightDots);
        Assert.InRange(piece.Baseline + piece.Text.InkDown(piece.Size), 0, first + printer.PrintableDots(tape));
        Assert.InRange(piece.X, 1, label.LengthDots - 1 - piece.Width);
    }

    private static void AssertInside(SquarePiece piece, LaidLabel label)
    {
        var side = piece.Qr.Modules * piece.DotsPerModule;
        var quiet = 4 * piece.DotsPerModule; // ISO/IEC 18004
        Assert.True(piece.X >= quiet && label.LengthDots - piece.X - side >= quiet);
        Assert.All(label.Pieces.OfType<TextPiece>(), text => Assert.True(text.X >= piece.X + side + quiet || text.X + text.Width <= piece.X));
        var first = label.Stock.Printer.FirstDot(label.Stock.Tape.WidthMm);
        Assert.InRange(piece.Y, first, first + label.Stock.Printer.PrintableDots(label.Stock.Tape.WidthMm) - side);
    }

    [Fact]
    public void The_least_important_line_goes_first_and_a_warning_names_it()
    {
        var label = Layouter.Lay(Purposes.Done(Samples.Done, Samples.Tag), LabelStock.Usual with { MaxLengthMm = 32 });
        Assert.Equal("24 / 23 lb", label.Words[0]);
        Assert.Equal("Restring by 14 Mar 2027", label.Words[1]);
        Assert.DoesNotContain("Łukasz", label.Words);
        Assert.Contains(label.Warnings, warning => warning.Contains("whose it is", StringComparison.Ordinal));
        Assert.DoesNotContain(label.Warnings, warning => warning.Contains("the tension", StringComparison.Ordinal) || warning.Contains("restring-by", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_printed_and_what_a_warning_names_make_up_everything_that_was_asked_for()
    {
        for (var length = 15; length <= 90; length += 5)
        {
            var label = Layouter.Lay(Purposes.Done(Samples.Done, Samples.Tag with { InWords = true }), LabelStock.Usual with { MaxLengthMm = length });
            var told = string.Join('\n', label.Words.Concat(label.Warnings));
            Assert.All((string[])[Samples.Done.Tension, "Rough poly 1.25", "Syngut 1.30", Samples.Done.RestringBy, Samples.Done.Strung, "62 on the shop’s gauge", Samples.Done.Whose, "tag.example/t/7K2M-9Q4T-XAV"],
                text => Assert.Contains(text, told, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_long_string_name_is_cut_before_its_gauge_and_long_before_the_date_goes()
    {
        var facts = Samples.Plain with { Mains = new StringFact(string.Concat(Enumerable.Repeat("Extraordinary ", 9)), "1.25") };
        foreach (var tape in Tape.Widths)
        {
            var label = Layouter.Lay(Purposes.Done(facts, Samples.Tag), Samples.Stock(tape, 180));
            Assert.Contains("Restring by 14 Mar 2027", label.Words);
            Assert.Contains(label.Words, words => words.StartsWith("Ext", StringComparison.Ordinal) && words.EndsWith("… 1.25", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_long_name_without_spaces_is_cut_and_never_drives_out_what_is_more_important()
    {
        var name = new string('W', 300);
        var label = Layouter.Lay(Purposes.Done(Samples.Done with { Whose = name }, null), LabelStock.Usual);
        Assert.Contains(label.Words, word => word.StartsWith("WWW", StringComparison.Ordinal) && word.EndsWith('…'));
        Assert.Contains("62 on the shop’s gauge", label.Words);
        Assert.Contains(label.Warnings, warning => warning.Contains("whose it is", StringComparison.Ordinal));
    }

    [Fact]
    public void Empty_fields_take_no_room()
    {
        var label = Layouter.Lay(Purposes.Done(new DoneFacts { Tension = "24", Unit = "lb", Whose = " " }, null), LabelStock.Usual);
        Assert.Equal(["24 lb"], label.Words);
        Assert.Empty(label.Warnings);
    }

    [Fact]
    public void A_label_of_nothing_is_short_and_empty()
    {
        var label = Layouter.Lay(Purposes.Free([]), LabelStock.Usual);
        Assert.Empty(label.Pieces);
        Assert.Equal(10, label.LengthMm, 0.2);
    }

    [Theory]
    [InlineData(6, "#FFFFFF", "#000000", "too narrow")]
    [InlineData(9, "#FFFFFF", "#000000", "0.141 mm")]
    [InlineData(24, "#000000", "#FFFFFF", "lighter than the tape")]
    [InlineData(24, "#FFFFFF", "#FFFF00", "too similar")]
    public void Where_the_square_is_refused_the_address_and_the_code_come_last_and_the_reason_is_told(
        int tape, string colour, string ink, string reason)
    {
        var stock = LabelStock.Usual with { Tape = new Tape(tape, Rgb.Parse(colour), Rgb.Parse(ink)) };
        var label = Layouter.Lay(Purposes.Done(Samples.Done, Samples.Tag), stock);
        Assert.Empty(label.Pieces.OfType<SquarePiece>());
        Assert.Equal("24 / 23 lb", label.Words[0]);
        Assert.Equal("tag.example/t/7K2M-9Q4T-XAV", label.Words[^1]);
        Assert.Contains(label.Warnings, warning => warning.Contains(reason, StringComparison.Ordinal));
        Assert.DoesNotContain(Layouter.Lay(Purposes.Return("Lost racket: scan to return it", Samples.Tag), stock).Words,
            word => word.Contains("scan", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void A_folded_label_is_printed_twice_one_after_the_other_with_the_gap_and_a_mark_between()
    {
        var content = Purposes.Done(Samples.Done, Samples.Tag);
        var label = Layouter.Lay(content, Samples.Stock(12, 360) with { FoldGapMm = 25, MaxLengthMm = 160 });
        var squares = label.Pieces.OfType<SquarePiece>().ToList();
        Assert.Equal(2, squares.Count);
        Assert.Equal((label.LengthDots - label.Stock.Printer.Dots(25)) / 2.0 + label.Stock.Printer.Dots(25), squares[1].X - squares[0].X, 1.0);
        var middle = label.Pieces.OfType<BoxPiece>().First();
        Assert.Equal(label.LengthDots / 2.0, middle.X, 2.0);
        Assert.True(label.LengthMm <= 160);
    }

    [Fact]
    public void A_logo_stands_beside_the_lines_and_goes_before_any_of_them_does()
    {
        var content = Purposes.Done(Samples.Done, Samples.Tag) with { Logo = new Picture(30, 10, [.. Enumerable.Repeat(true, 300)]) };
        var wide = Layouter.Lay(content, LabelStock.Usual with { MaxLengthMm = 120 });
        var logo = Assert.Single(wide.Pieces.OfType<PicturePiece>());
        Assert.Equal((70, 210), (logo.Height, logo.Width));
        Assert.True(wide.Pieces.OfType<TextPiece>().All(text => text.X + text.Width < logo.X));
        var narrow = Layouter.Lay(content, LabelStock.Usual with { MaxLengthMm = 70 });
        Assert.Empty(narrow.Pieces.OfType<PicturePiece>());
        Assert.Contains(narrow.Warnings, warning => warning.Contains("logo", StringComparison.Ordinal));
        Assert.Contains("24 / 23 lb", narrow.Words);
    }

    [Fact]
    public void The_same_content_is_laid_out_the_same_again()
    {
        foreach (var (_, content) in Samples.Purposes)
            Assert.Equal(Layouter.Lay(content, LabelStock.Usual).Words, Layouter.Lay(content, LabelStock.Usual).Words);
    }
}
