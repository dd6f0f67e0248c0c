using TagPage.Labels.Content;
using TagPage.Labels.Geometry;
using TagPage.Labels.Layout;
using TagPage.Labels.Tests.Cast;

namespace TagPage.Labels.Tests.Layout;

/// <summary>Every racket of the demo on every tape: what is seen first never gets smaller on a wider one.</summary>
public class FiguresTests
{
    // The widest first: it asks for all others.
    private static List<LaidLabel> OnAllTapes(LabelContent content) => [.. Tape.Widths.Reverse().Select(tape => Samples.Lay(content, Samples.Stock(tape, 180))).Reverse()];

    // 0 where it is left out.
    private static int SizeOf(LaidLabel label, string text) => label.Pieces.OfType<TextPiece>()
        .Where(piece => piece.Text.Text.Contains(text, StringComparison.Ordinal)).Select(piece => piece.Size).DefaultIfEmpty(0).Max();

    private static string? Smaller(string racket, IReadOnlyList<LaidLabel> labels, IEnumerable<string> figures) => figures
        .Select(figure => (Figure: figure, Sizes: labels.Select(label => SizeOf(label, figure)).ToList()))
        .Where(set => set.Sizes.Zip(set.Sizes.Skip(1)).Any(pair => pair.Second < pair.First))
        .Select(set => $"{racket}, “{set.Figure}”: {string.Join(' ', set.Sizes)} dots").FirstOrDefault();

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Tension_and_restring_by_date_are_never_smaller_on_wider_tape_and_lead_on_every_one(bool nameLeads)
    {
        List<string> faults = [];
        foreach (var racket in DemoRackets.All)
        {
            var (facts, labels) = (racket.Facts, OnAllTapes(nameLeads ? racket.NameFirst : racket.Done));
            if (Smaller(racket.Name, labels, [facts.Tension, facts.RestringBy]) is { } fault)
                faults.Add(fault);
            faults.AddRange(labels.Where(label => !Leads(label, facts)).Select(label => $"{racket.Name} on {label.Stock.Tape.WidthMm} mm: figures do not lead"));
        }
        Assert.True(faults.Count == 0, string.Join("\n", faults));
    }

    private static bool Leads(LaidLabel label, DoneFacts facts)
    {
        var others = label.Pieces.OfType<TextPiece>().Where(piece => piece.Text.Text != facts.Tension && piece.Text.Text != facts.RestringBy && piece.Text.Text != facts.Whose).Max(piece => piece.Size);
        return SizeOf(label, facts.Tension) >= 1.15 * others && SizeOf(label, facts.RestringBy) >= 1.15 * others;
    }

    [Fact]
    public void Desk_number_and_tension_are_never_smaller_on_wider_tape_and_the_bags_are_no_smaller_than_the_rackets()
    {
        List<string> faults = [];
        foreach (var ((racket, facts, _), i) in DemoRackets.All.Select((racket, i) => (racket, i)))
        {
            var desk = new DeskFacts { Number = $"{100 + i}", Tension = $"{facts.Tension} {facts.Unit}", Strings = Strings(facts), When = "28 Nov 2026 14:30", Name = facts.Whose };
            var (onRacket, onBag) = (OnAllTapes(Purposes.DeskRacket(desk, null)), OnAllTapes(Purposes.DeskBag(desk)));
            faults.AddRange(new[] { Smaller(racket, onRacket, [desk.Number, desk.Tension]), Smaller($"{racket}, bag", onBag, [desk.Number, desk.Tension]) }.OfType<string>());
            faults.AddRange(onRacket.Zip(onBag).Where(pair => SizeOf(pair.Second, desk.Number) < SizeOf(pair.First, desk.Number) || SizeOf(pair.Second, desk.Tension) < SizeOf(pair.First, desk.Tension))
                .Select(pair => $"{racket} on {pair.First.Stock.Tape.WidthMm} mm: the racket's figures are larger than the bag's"));
            if (SizeOf(onRacket[5], desk.Number) < 1.1 * SizeOf(onRacket[4], desk.Number))
                faults.Add($"{racket}: number {SizeOf(onRacket[4], desk.Number)} dots on 24 mm and {SizeOf(onRacket[5], desk.Number)} on 36 mm");
        }
        Assert.True(faults.Count == 0, string.Join("\n", faults));
    }

    private static string Strings(DoneFacts facts) => facts.Crosses.Text.Length > 0 ? $"{facts.Mains.Text} / {facts.Crosses.Text}" : facts.Mains.Text;

    [Fact]
    public void Bag_label_stands_in_two_lines_on_wide_tape_and_uses_its_height()
    {
        foreach (var (tape, longest) in ((int, double)[])[(24, 45), (36, 65)])
        {
            var label = Samples.Lay(Samples.Of("desk bag"), Samples.Stock(tape, 180));
            var type = label.Pieces.OfType<TextPiece>().ToList();
            Assert.Equal(2, type.Select(piece => piece.Baseline).Distinct().Count());
            var used = (double)(type.Max(piece => piece.Baseline) - type.Min(piece => piece.Baseline - piece.Text.InkUp(piece.Size))) / label.Stock.Printer.PrintableDots(tape);
            Assert.True(used >= 0.85 && label.LengthMm <= longest, $"{tape} mm: {used:0.00} of the height, {label.LengthMm:0.0} mm long");
        }
    }

    // 28 dots hold two rows of the least type and no dot more: what 9 mm sets in three rows stands side by side.
    [Fact]
    public void Strip_of_6_mm_has_two_rows_and_with_one_string_is_at_most_a_sixth_longer_than_that_of_9_mm()
    {
        List<string> faults = [];
        foreach (var one in DemoRackets.All)
        {
            var (racket, facts, tag) = one;
            foreach (var content in (LabelContent[])[one.Done, one.NameFirst, Purposes.Return("Lost racket: scan to return it", tag)])
            {
                var (nine, six) = (Samples.Lay(content, Samples.Stock(9, 180)), Samples.Lay(content, Samples.Stock(6, 180)));
                if (six.Pieces.OfType<TextPiece>().Select(piece => piece.Baseline).Distinct().Count() < 2)
                    faults.Add($"{racket}: one row of {six.LengthMm:0.0} mm");
                if (facts.Crosses.Text.Length == 0 && six.LengthMm > nine.LengthMm * 7 / 6)
                    faults.Add($"{racket}: {six.LengthMm:0.0} mm on 6 mm and {nine.LengthMm:0.0} on 9");
            }
        }
        Assert.True(faults.Count == 0, string.Join("\n", faults));
    }

    [Fact]
    public void Nothing_stands_right_under_a_figure()
    {
        List<string> faults = [];
        foreach (var racket in DemoRackets.All)
        {
            var facts = racket.Facts;
            foreach (var label in OnAllTapes(racket.NameFirst))
            {
                var type = label.Pieces.OfType<TextPiece>().ToList();
                foreach (var figure in type.Where(piece => piece.Text.Text == facts.Tension || piece.Text.Text == facts.RestringBy))
                {
                    var under = type.Where(piece => piece.Baseline > figure.Baseline && piece.X < figure.X + figure.Width && figure.X < piece.X + piece.Width).Select(piece => piece.Baseline - piece.Text.InkUp(piece.Size)).DefaultIfEmpty(int.MaxValue).Min();
                    if (under - figure.Baseline < Math.Round(0.12 * figure.Size))
                        faults.Add($"{racket.Name} on {label.Stock.Tape.WidthMm} mm: {under - figure.Baseline} dots under “{figure.Text.Text}” of {figure.Size}");
                }
            }
        }
        Assert.True(faults.Count == 0, string.Join("\n", faults));
    }

    [Fact]
    public void Lost_racket_label_of_24_mm_is_short_and_what_it_measures_fills_its_tape()
    {
        var back = Samples.Lay(Samples.Of("return"), Samples.Stock(24, 180));
        Assert.True(back.LengthMm <= 44, $"{back.LengthMm:0.0} mm");

        // All of an adult's racket stands one under the other, whose it is behind the racket's number.
        var facts = Samples.Measures with { SwingWeight = "319.0", Measured = "8 Jul 2025, strung", Whose = "Željko" };
        var measured = Layouter.Lay(Purposes.Measures(facts, Samples.Tag), Samples.Stock(24, 180));
        Assert.Single(measured.Pieces.OfType<TextPiece>().Where(piece => piece.Text.Text != "Željko").Select(piece => piece.X).Distinct());
        Assert.True(measured.LengthMm <= 44, $"{measured.LengthMm:0.0} mm");
        var narrowest = Layouter.Lay(Purposes.Measures(facts, Samples.Tag), Samples.Stock(9, 180));
        Assert.True(narrowest.LengthMm <= 55, $"{narrowest.LengthMm:0.0} mm on 9 mm");
        var juniors = Purposes.Measures(facts with { Whose = "" }, Samples.Tag);
        var (on18, on24) = (Layouter.Lay(juniors, Samples.Stock(18, 180)), Layouter.Lay(juniors, Samples.Stock(24, 180)));
        var (narrow, wide) = (on18.Pieces.OfType<TextPiece>().Min(piece => piece.Size), on24.Pieces.OfType<TextPiece>().Min(piece => piece.Size));
        Assert.True(wide > narrow && on24.Square!.ModuleMm > on18.Square!.ModuleMm, $"type of {narrow} and {wide} dots, modules of {on18.Square!.ModuleMm:0.000} and {on24.Square!.ModuleMm:0.000} mm");
    }

    [Fact]
    public void Folded_18_mm_keeps_the_reading_and_the_whole_name()
    {
        var facts = Samples.Done with { Tension = "24 / 25", Mains = new StringFact("Pintleford Whisk", "0.70"), Crosses = new StringFact("", ""), RestringBy = "12 Dec 2026", Strung = "28 Jul 2026", Reading = "1072", Instrument = "phone pitch, Hz", Whose = "Bảo Châu" };
        foreach (var tape in (int[])[12, 18, 24, 36])
        {
            var label = Layouter.Lay(Purposes.Done(facts, Samples.Tag), Samples.Stock(tape, 180) with { MaxLengthMm = 120, FoldGapMm = 30 });
            Assert.Contains("Bảo Châu", label.Words);
            Assert.Contains("Restring by 12 Dec 2026", label.Words);
            Assert.Contains(label.Words, words => words.Contains("1072", StringComparison.Ordinal));
            Assert.True(tape == 12 || label.Words.Contains("Strung 28 Jul 2026"), $"{tape} mm: {string.Join(" | ", label.Words)}");
        }
    }
}
