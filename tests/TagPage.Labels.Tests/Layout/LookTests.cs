using TagPage.Labels.Content;
using TagPage.Labels.Geometry;
using TagPage.Labels.Layout;
using TagPage.Labels.Render;
using TagPage.Labels.Tests.Cast;

namespace TagPage.Labels.Tests.Layout;

/// <summary>What makes a label look made: what is seen first, one set of baselines, words apart, no empty tape.</summary>
public class LookTests
{
    private static LaidLabel Lay(LabelContent content, double tape, int dpi = 180) => Samples.Lay(content, Samples.Stock(tape, dpi));

    private static int SizeOf(LaidLabel label, string text) => label.Pieces.OfType<TextPiece>().Single(piece => piece.Text.Text == text).Size;

    [Fact]
    public void Tension_and_restring_by_date_are_the_largest_and_of_one_size()
    {
        foreach (var (tape, dpi) in from tape in Tape.Widths from dpi in (int[])[180, 360] select (tape, dpi))
        {
            var label = Lay(Samples.Of("done, one string"), tape, dpi);
            var others = label.Pieces.OfType<TextPiece>().Where(piece => piece.Text.Text is not ("52" or "14 Mar 2027")).Max(piece => piece.Size);
            Assert.Equal(SizeOf(label, "52"), SizeOf(label, "14 Mar 2027"));
            Assert.True(SizeOf(label, "52") >= 1.2 * others, $"{tape} mm, {dpi} dpi: {SizeOf(label, "52")} against {others}");
        }
    }

    [Fact]
    public void A_name_may_lead_and_is_then_as_large_as_the_tension()
    {
        var label = Lay(Purposes.Done(Samples.Done with { NameLeads = true }, Samples.Tag), 12);
        Assert.Equal(SizeOf(label, "24 / 23"), SizeOf(label, "Łukasz"));
        Assert.Equal("Łukasz", label.Pieces.OfType<TextPiece>().MinBy(piece => piece.X)!.Text.Text);
    }

    [Fact]
    public void The_address_stands_in_words_only_without_the_square_or_where_it_is_wished_for()
    {
        Assert.DoesNotContain(Lay(Samples.Of("done"), 12).Words, words => words.Contains("tag.example", StringComparison.Ordinal));
        Assert.Contains("tag.example/t/7K2M-9Q4T-XAV", Lay(Samples.Of("done"), 9).Words);
        Assert.Contains("tag.example/t/7K2M-9Q4T-XAV", Lay(Purposes.Done(Samples.Plain, Samples.Tag with { InWords = true }), 18).Words);
        Assert.Contains("tag.example/t/7K2M-9Q4T-XAV", Lay(Samples.Of("blank"), 12).Words);
    }

    [Fact]
    public void Plain_type_on_tape_of_12_mm_or_more_has_an_x_of_1_3_mm_and_the_label_still_fits_the_throat()
    {
        foreach (var (name, content) in Samples.Purposes)
        {
            foreach (var (tape, dpi) in from tape in (int[])[12, 18, 24, 36] from dpi in (int[])[180, 300, 360] select (tape, dpi))
            {
                var label = Lay(content, tape, dpi);
                // By the dots: an x has no ascender and stands on the line.
                var x = label.Pieces.OfType<TextPiece>().Min(piece => Text.Shaper.Shape("x").InkUp(piece.Size)) * label.Stock.Printer.DotMm;
                Assert.True(x >= 1.27, $"{name} on {tape} mm at {dpi} dpi: {x:0.00} mm"); // 1.3 mm but for half a dot
                Assert.True(label.LengthMm <= 80);
            }
        }
    }

    [Fact]
    public void Wider_tape_never_has_smaller_type_for_what_was_done_but_for_one_dot()
    {
        foreach (var dpi in (int[])[180, 300, 360])
        {
            var heights = Tape.Widths.Select(tape => Lay(Samples.Of("done"), tape, dpi).Pieces.OfType<TextPiece>().Min(piece => Text.Shaper.Shape("x").InkUp(piece.Size))).ToList();
            Assert.All(heights.Zip(heights.Skip(1)), pair => Assert.True(pair.Second >= pair.First - 1, $"at {dpi} dpi: {string.Join(' ', heights)}"));
        }
    }

    // Tape of 6 and 9 mm carries no square, so that its labels hold something else.
    [Theory]
    [InlineData(180)]
    [InlineData(300)]
    [InlineData(360)]
    public void Wider_tape_has_larger_type_that_uses_its_height(int dpi)
    {
        foreach (var (name, content) in Samples.Purposes.Where(purpose => purpose.Name is "done" or "done, one string" or "measures"))
        {
            var labels = ((int[])[12, 18, 24, 36]).Select(tape => Lay(content, tape, dpi)).ToList();
            var heights = labels.Select(label => label.Pieces.OfType<TextPiece>().Min(piece => Text.Shaper.Shape("x").InkUp(piece.Size)) * label.Stock.Printer.DotMm).ToList();
            Assert.All(heights.Zip(heights.Skip(1)), pair => Assert.True(pair.Second >= pair.First - 0.01, $"{name} at {dpi} dpi: {string.Join(' ', heights.Select(h => h.ToString("0.00", null)))}"));
            Assert.True(heights[3] >= 1.05 * heights[2], $"{name} at {dpi} dpi: {string.Join(' ', heights.Select(h => h.ToString("0.00", null)))}");
            Assert.All(labels, label => Assert.True(Used(label) >= 0.8, $"{name} on {label.Stock.Tape.WidthMm} mm at {dpi} dpi: {Used(label):0.00} of the height"));
        }
    }

    [Theory]
    [InlineData("return")]
    [InlineData("blank")]
    [InlineData("measures")]
    public void Tape_of_36_mm_is_read_from_farther_away_than_tape_of_24(string purpose)
    {
        var content = Samples.Of(purpose);
        var (narrow, wide) = (Lay(content, 24).Pieces.OfType<TextPiece>().Min(piece => piece.Size), Lay(content, 36).Pieces.OfType<TextPiece>().Min(piece => piece.Size));
        Assert.True(wide >= 1.2 * narrow, $"{narrow} and {wide} dots");
    }

    [Theory]
    [InlineData(180)]
    [InlineData(360)]
    public void Desk_number_stays_the_largest_on_wide_tape_and_nothing_is_cut_beside_it(int dpi)
    {
        var sizes = new List<int>();
        foreach (var tape in (int[])[12, 18, 24, 36])
        {
            var label = Lay(Samples.Of("desk racket"), tape, dpi);
            sizes.Add(SizeOf(label, "117"));
            Assert.Empty(label.Warnings);
            Assert.True(sizes[^1] >= 2 * SizeOf(label, "24 / 23 lb"), $"{tape} mm: {sizes[^1]} against {SizeOf(label, "24 / 23 lb")}");
        }
        Assert.All(sizes.Zip(sizes.Skip(1)), pair => Assert.True(pair.Second >= pair.First, string.Join(' ', sizes)));
    }

    // At 300 dpi one string on 18 mm happens to pack so well that 24 mm, with type a third larger, comes out longer.
    [Theory]
    [InlineData(180)]
    [InlineData(360)]
    public void Label_of_what_was_done_is_hardly_longer_on_tape_of_24_mm_than_on_18(int dpi)
    {
        foreach (var name in new[] { "done", "done, one string" })
        {
            var (narrow, wide) = (Lay(Samples.Of(name), 18, dpi).LengthMm, Lay(Samples.Of(name), 24, dpi).LengthMm);
            Assert.True(wide <= 1.06 * narrow, $"at {dpi} dpi: {narrow:0.0} and {wide:0.0} mm");
        }
    }

    // From the highest ink to the lowest line, of what can be printed.
    private static double Used(LaidLabel label)
    {
        var text = label.Pieces.OfType<TextPiece>().ToList();
        return (double)(text.Max(piece => piece.Baseline) - text.Min(piece => piece.Baseline - piece.Text.InkUp(piece.Size))) / label.Stock.Printer.PrintableDots(label.Stock.Tape.WidthMm);
    }

    [Theory]
    [InlineData("#B08D2E", true)]
    [InlineData("#B3261E", false)]
    [InlineData("#000000", false)]
    public void Faint_ink_is_named(string ink, bool isFaint)
    {
        var label = Layouter.Lay(Samples.Of("done, one string"), LabelStock.Usual with { Tape = Tape.Usual with { Ink = Core.Colour.Rgb.Parse(ink) } });

        Assert.Equal(isFaint, label.Warnings.Any(warning => warning.StartsWith("Ink and tape are rather similar", StringComparison.Ordinal)));
    }

    [Fact]
    public void All_columns_share_one_set_of_baselines()
    {
        foreach (var (name, content) in Samples.Purposes.Where(purpose => !purpose.Name.StartsWith("desk", StringComparison.Ordinal)))
        {
            foreach (var tape in Tape.Widths)
            {
                var rows = Lay(content, tape).Pieces.OfType<TextPiece>().Select(piece => piece.Baseline).Distinct().Order().ToList();
                var least = Lay(content, tape).Pieces.OfType<TextPiece>().Min(piece => piece.Size);
                Assert.All(rows.Zip(rows.Skip(1)), pair => Assert.True(pair.Second - pair.First >= 0.8 * least, $"{name} on {tape} mm: lines at {pair.First} and {pair.Second}"));
            }
        }
    }

    [Fact]
    public void No_tape_is_left_empty_at_the_end()
    {
        foreach (var (_, content) in Samples.Purposes)
        {
            foreach (var tape in Tape.Widths)
            {
                var label = Lay(content, tape);
                var end = label.Pieces.OfType<TextPiece>().Max(piece => piece.X + piece.Width);
                Assert.True(label.LengthDots - end <= label.Stock.Printer.Dots(1) || label.LengthMm < 10.2);
            }
        }
    }

    [Fact]
    public void Labels_are_shorter_than_the_longest_they_may_be()
    {
        Assert.InRange(Lay(Samples.Of("done, one string"), 12).LengthMm, 40, 65);
        Assert.InRange(Lay(Samples.Of("done"), 12).LengthMm, 50, 75);
        Assert.InRange(Lay(Purposes.Blank(Samples.Tag with { Purpose = "Racket tag" }), 12).LengthMm, 20, 35);
    }

    // Read off the printed dots alone: between two words no ink for at least half the height of an x; within a word never so much.
    [Theory]
    [InlineData(180)]
    [InlineData(203)]
    [InlineData(360)]
    public void Words_keep_apart_in_the_printers_own_dots(int dpi)
    {
        foreach (var (points, words) in from points in (double[])[5, 6, 7, 8, 10] from words in (string[])["Restring by", "Rough poly", "Good luck", "kept apart", "Strung Nov"] select (points, words))
        {
            // Any words grow to two and a half times the size of plain lines.
            var label = Layouter.Lay(Purposes.Free([words, words]), Samples.Stock(18, dpi) with { LargestPoints = points / 2.5 });
            Assert.Equal(2, label.Pieces.OfType<TextPiece>().Count());
            foreach (var piece in label.Pieces.OfType<TextPiece>())
            {
                var x = Text.Shaper.Shape("x").InkUp(piece.Size);
                var gaps = Gaps(LabelDots.Of(label), piece, x).OrderDescending().ToList();
                Assert.True(gaps[0] >= 0.5 * x, $"{words} in {piece.Size} dots at {dpi} dpi: {gaps[0]} dots between the words, x is {x}");
                Assert.True(gaps.Count == 1 || gaps[1] <= 0.7 * gaps[0], $"{words} in {piece.Size} dots at {dpi} dpi: {gaps[1]} dots within a word, {gaps[0]} between");
            }
        }
    }

    // Runs of columns without ink between the first and the last letter, in the rows of one line.
    private static IEnumerable<int> Gaps(Dots dots, TextPiece piece, int x)
    {
        var columns = Enumerable.Range((int)piece.X, piece.Width).Select(column => Enumerable.Range(piece.Baseline - x, x).Any(row => dots[column, row])).ToList();
        var run = 0;
        foreach (var inked in columns.SkipWhile(inked => !inked).Reverse().SkipWhile(inked => !inked))
        {
            if (inked && run > 0)
                yield return run;
            run = inked ? 0 : run + 1;
        }
    }
}
