using TagPage.Labels.Content;
using TagPage.Labels.Geometry;
using TagPage.Labels.Layout;
using TagPage.Labels.Tests.Cast;

namespace TagPage.Labels.Tests.Layout;

/// <summary>Wider tape: no longer label for the same content, a square that uses the height, type in the middle.</summary>
public class WiderTapeTests
{
    private static readonly DoneFacts LongName = Samples.Done with { Whose = "Željko Marković-Šimunović", Mains = new StringFact("Tarnholm Furrow Soft", "1.25"), Tension = "24.5 / 23.5", Reading = "63.5" };

    private static readonly IReadOnlyList<(string Name, LabelContent Content)> Figured =
    [
        .. Samples.Purposes.Where(purpose => purpose.Name.StartsWith("done", StringComparison.Ordinal) || purpose.Name is "measures" or "waiting"),
        ("long name", Purposes.Done(LongName, Samples.Tag)),
        ("long name first", Purposes.Done(LongName with { NameLeads = true }, Samples.Tag)),
        ("one string, name first", Purposes.Done(Samples.Plain with { Whose = "Željko Marković", NameLeads = true }, Samples.Tag)),
        ("address in words", Purposes.Done(Samples.Plain, Samples.Tag with { InWords = true })),
        ("no tag", Purposes.Done(Samples.Done, null)),
    ];

    [Theory]
    [InlineData(180)]
    [InlineData(360)]
    public void Wider_tape_never_makes_a_longer_label_of_the_same_content(int dpi)
    {
        foreach (var (name, content) in Figured)
        {
            var labels = ((int[])[12, 18, 24]).Select(tape => Samples.Lay(content, Samples.Stock(tape, dpi))).ToList();
            foreach (var (narrow, wide) in labels.Zip(labels.Skip(1)).Where(pair => pair.First.Warnings.Count == 0))
            {
                Assert.True(wide.LengthMm <= narrow.LengthMm + 0.01, $"{name} at {dpi} dpi: {narrow.LengthMm:0.0} mm on {narrow.Stock.Tape.WidthMm} mm and {wide.LengthMm:0.0} mm on {wide.Stock.Tape.WidthMm} mm");
                Assert.Empty(wide.Warnings);
            }
        }
    }

    [Fact]
    public void What_fits_a_narrower_tape_is_not_cut_on_a_wider_one()
    {
        var content = Figured.Single(purpose => purpose.Name == "long name").Content;
        foreach (var tape in (int[])[18, 24, 36])
            Assert.Contains("Željko Marković-Šimunović", Samples.Lay(content, Samples.Stock(tape, 180)).Words);
    }

    [Theory]
    [InlineData(180)]
    [InlineData(360)]
    public void Square_of_36_mm_tape_stands_higher_than_half_of_it(int dpi)
    {
        foreach (var (name, content) in Samples.Purposes.Where(purpose => purpose.Name is "done" or "done, one string" or "return" or "blank" or "measures" or "waiting"))
        {
            var label = Samples.Lay(content, Samples.Stock(36, dpi));
            var side = label.Pieces.OfType<SquarePiece>().Single() is var square ? square.Qr.Modules * square.DotsPerModule * label.Stock.Printer.DotMm : 0;
            Assert.True(side >= 18, $"{name} at {dpi} dpi: {side:0.0} mm");
        }
    }

    [Fact]
    public void Square_scans_from_arms_length_on_every_tape_that_can_hold_such_a_one()
    {
        var small = DemoRackets.All.SelectMany(racket => new[] { racket.Done, racket.NameFirst })
            .SelectMany(content => ((int[])[18, 24]).Select(tape => Samples.Lay(content, Samples.Stock(tape, 180))))
            .Where(label => label.Square!.Grade != SquareGrade.Fine).ToList();

        Assert.True(small.Count == 0, string.Join("\n", small.Select(label => $"{label.Square!.ModuleMm:0.00} mm on {label.Stock.Tape.WidthMm} mm: {string.Join(", ", label.Words)}")));
    }

    [Fact]
    public void Type_stands_in_the_middle_of_the_tape()
    {
        foreach (var (name, content) in Figured.Concat(Samples.Purposes))
        {
            foreach (var tape in Tape.Widths)
            {
                var label = Samples.Lay(content, Samples.Stock(tape, 180));
                var type = label.Pieces.OfType<TextPiece>().ToList();
                var above = type.Min(piece => piece.Baseline - piece.Text.InkUp(piece.Size)) - label.Stock.Printer.FirstDot(tape);
                var below = label.Stock.Printer.FirstDot(tape) + label.Stock.Printer.PrintableDots(tape) - type.Max(piece => piece.Baseline + piece.Text.InkDown(piece.Size));
                Assert.True(Math.Abs(above - below) <= 1, $"{name} on {tape} mm: {above} dots free above, {below} below");
            }
        }
    }
}
