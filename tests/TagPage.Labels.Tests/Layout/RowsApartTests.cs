using TagPage.Labels.Content;
using TagPage.Labels.Geometry;
using TagPage.Labels.Layout;
using TagPage.Labels.Tests.Cast;

namespace TagPage.Labels.Tests.Layout;

/// <summary>Between the ink of neighbouring lines stays a clear row, and what belongs together stays together.</summary>
public class RowsApartTests
{
    private static readonly DoneFacts TwoStrings = Samples.Done with
    {
        Tension = "53 / 51",
        Mains = new StringFact("Tarnholm Furrow", "1.25"),
        Crosses = new StringFact("Syngut", "1.30"),
        RestringBy = "14 Aug 2027",
        Whose = "Jaap Quigley",
    };

    private static readonly LabelContent DoneTwoStrings = Content.Purposes.Done(TwoStrings, Samples.Tag);

    private static readonly IReadOnlyList<(string Name, LabelContent Content)> Purposes =
    [
        .. Samples.Purposes,
        ("done, two strings", DoneTwoStrings),
        ("done, two strings, no reading", Content.Purposes.Done(TwoStrings with { Reading = "", Instrument = "" }, Samples.Tag)),
        ("done, every line", Content.Purposes.Done(TwoStrings with { OwnLine = "jump, go quickly" }, Samples.Tag with { InWords = true })),
    ];

    private static IEnumerable<LabelStock> Stocks =>
        from tape in Tape.Widths
        from dpi in (int[])[180, 300, 360]
        from fold in (double?[])[null, 30]
        select Samples.Stock(tape, dpi) with { MaxLengthMm = fold is null ? 80 : 120, FoldGapMm = fold };

    [Fact]
    public void No_two_pieces_of_type_touch_and_0_15_mm_stay_clear_between_lines()
    {
        foreach (var (stock, (name, content)) in from stock in Stocks from purpose in Purposes select (stock, purpose))
        {
            var pieces = Samples.Lay(content, stock).Pieces.OfType<TextPiece>().ToList();
            foreach (var (upper, lower) in from one in pieces from other in pieces where one.Baseline < other.Baseline && IsAbove(one, other) select (one, other))
            {
                var clear = Top(lower) - Bottom(upper);
                Assert.True(clear >= Math.Round(0.15 / stock.Printer.DotMm),
                    $"{name} on {stock.Tape.WidthMm} mm at {stock.Printer.Dpi} dpi: {clear} dots between “{upper.Text.Text}” and “{lower.Text.Text}”");
            }
            foreach (var (left, right) in from one in pieces from other in pieces where one.X < other.X && Top(one) < Bottom(other) && Top(other) < Bottom(one) select (one, other))
                Assert.True(right.X > left.X + left.Width, $"{name} on {stock.Tape.WidthMm} mm at {stock.Printer.Dpi} dpi: “{left.Text.Text}” runs into “{right.Text.Text}”");
        }

        static bool IsAbove(TextPiece one, TextPiece other) => one.X < other.X + other.Width && other.X < one.X + one.Width;
        static int Top(TextPiece piece) => piece.Baseline - piece.Text.InkUp(piece.Size);
        static int Bottom(TextPiece piece) => piece.Baseline + piece.Text.InkDown(piece.Size);
    }

    [Fact]
    public void No_line_ends_in_a_slash_that_nothing_follows()
    {
        foreach (var stock in Stocks)
        {
            var pieces = Samples.Lay(DoneTwoStrings, stock).Pieces.OfType<TextPiece>().ToList();
            Assert.All(pieces.Where(piece => piece.Text.Text.EndsWith(" /", StringComparison.Ordinal)), piece =>
                Assert.Contains(pieces, next => next.Baseline == piece.Baseline && next.X > piece.X && next.X - piece.X - piece.Width <= piece.Size / 2));
        }
    }

    [Theory]
    [InlineData(6, 180)]
    [InlineData(6, 360)]
    [InlineData(9, 180)]
    [InlineData(9, 360)]
    public void Folded_narrow_tape_keeps_the_restring_by_date_and_cuts_the_strings_name(double tape, int dpi)
    {
        foreach (var facts in (DoneFacts[])[TwoStrings, TwoStrings with { Crosses = new StringFact("", "") }])
        {
            foreach (var address in (string[])["https://tag.example", "https://strings.eastmere.example"])
            {
                var stock = Samples.Stock(tape, dpi) with { MaxLengthMm = 120, FoldGapMm = 30 };
                var label = Layouter.Lay(Content.Purposes.Done(facts, Samples.Tag with { BaseAddress = address }), stock);

                Assert.True(label.Words.Any(words => words.Contains("14 Aug 2027", StringComparison.Ordinal)), $"{address}: {string.Join(" | ", label.Words)}");
                Assert.Contains(label.Words, words => words.StartsWith("53 / 51", StringComparison.Ordinal));
            }
        }
    }
}
