using TagPage.Labels.Content;
using TagPage.Labels.Layout;
using TagPage.Labels.Render;
using TagPage.Labels.Tests.Cast;
using TagPage.Labels.Text;

namespace TagPage.Labels.Tests.Layout;

/// <summary>Tape of 6 and 9 mm has no room for a square: what leads there, what is left out, and how names are cut.</summary>
public class NarrowTapeTests
{
    private static readonly DoneFacts LongName = Samples.Done with { Whose = "Željko Marković-Šimunović", Mains = new StringFact("Tarnholm Furrow Soft", "1.25") };

    private static List<TextPiece> TypeOf(LaidLabel label) => [.. label.Pieces.OfType<TextPiece>()];

    private static TextPiece First(LaidLabel label) => TypeOf(label).OrderBy(piece => piece.X).ThenBy(piece => piece.Baseline).First();

    private static TextPiece Piece(LaidLabel label, string start) => TypeOf(label).Single(piece => piece.Text.Text.StartsWith(start, StringComparison.Ordinal));

    [Theory]
    [InlineData(6, 180)]
    [InlineData(6, 360)]
    [InlineData(9, 180)]
    [InlineData(9, 360)]
    public void Tension_leads_or_the_name_and_the_address_ends_the_label(double tape, int dpi)
    {
        foreach (var (tension, content) in new[] { (Samples.Plain.Tension, Samples.Of("done, one string")), (Samples.Done.Tension, Samples.Of("done")), (LongName.Tension, Purposes.Done(LongName, Samples.Tag)) })
        {
            var label = Samples.Lay(content, Samples.Stock(tape, dpi));
            Assert.Equal(tension, First(label).Text.Text);
            Assert.Equal("tag.example/t/7K2M-9Q4T-XAV", label.Words[^1]);
            var address = Piece(label, "tag.example");
            Assert.All(TypeOf(label).Where(piece => piece.Baseline == address.Baseline), piece => Assert.True(piece.X <= address.X, $"{piece.Text.Text} after the address on {tape} mm"));
        }
        var led = Layouter.Lay(Purposes.Done(Samples.Done with { NameLeads = true }, Samples.Tag), Samples.Stock(tape, dpi));
        Assert.Equal("Łukasz", First(led).Text.Text);
    }

    [Theory]
    [InlineData(180)]
    [InlineData(300)]
    [InlineData(360)]
    public void Tape_of_6_mm_holds_the_essentials_on_one_or_two_lines_and_is_no_longer_than_it_must(int dpi)
    {
        var label = Samples.Lay(Samples.Of("done, one string"), Samples.Stock(6, dpi));
        Assert.Equal(["52 lb", "Restring by 14 Mar 2027", "Rough poly 1.25", "tag.example/t/7K2M-9Q4T-XAV"], label.Words);
        Assert.InRange(TypeOf(label).Select(piece => piece.Baseline).Distinct().Count(), 1, 2);
        Assert.True(label.LengthMm <= 52, $"{label.LengthMm:0.0} mm");
        Assert.Contains(label.Warnings, warning => warning.Contains("26 Nov 2026", StringComparison.Ordinal) && warning.Contains("Racket 1, no. 1042", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(180)]
    [InlineData(360)]
    public void Tape_of_9_mm_holds_everything_in_at_most_three_lines_of_one_grid(int dpi)
    {
        foreach (var name in (string[])["done, one string", "done"])
        {
            var label = Samples.Lay(Samples.Of(name), Samples.Stock(9, dpi));
            Assert.DoesNotContain(label.Warnings, warning => warning.StartsWith("There is no room", StringComparison.Ordinal));
            Assert.InRange(TypeOf(label).Select(piece => piece.Baseline).Distinct().Count(), 2, 3);
            Assert.True(label.LengthMm <= 66, $"{label.LengthMm:0.0} mm");
        }
    }

    [Fact]
    public void Names_are_cut_after_a_whole_word()
    {
        List<string> seen = [];
        foreach (var (tape, length) in from tape in (int[])[9, 12, 18] from length in Enumerable.Range(3, 14) select (tape, 5 * length))
        {
            var label = Layouter.Lay(Purposes.Done(LongName with { NameLeads = true }, null), Samples.Stock(tape, 180) with { MaxLengthMm = length });
            seen.AddRange(label.Words.Where(words => words.StartsWith("Žel", StringComparison.Ordinal) || words.StartsWith("Tarn", StringComparison.Ordinal)));
        }
        string[] whole = ["Željko…", "Željko Marković…", "Željko Marković-Šimunović", "Tarnholm… 1.25", "Tarnholm Furrow… 1.25", "Tarnholm Furrow Soft 1.25"];
        Assert.Contains("Željko Marković…", seen);
        Assert.Contains("Tarnholm… 1.25", seen);
        // Where not even its first word fits, a name is cut within it.
        Assert.All(seen.Except(whole), words => Assert.True(words.IndexOf('…', StringComparison.Ordinal) is > 2 and < 8, words));
    }

    // At small sizes the three dots of one glyph ran into a line: "Želj_".
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Dots_of_an_ellipsis_stay_apart_at_every_size(bool isBold)
    {
        foreach (var size in Enumerable.Range(12, 40))
        {
            var text = Shaper.Shape("ox…", isBold);
            var dots = LabelDots.Of(new LaidLabel(LabelStock.Usual, 300, [new TextPiece(5, 50, size, text)], null, []));
            var letters = 5 + Shaper.Shape("ox", isBold).WidthAt(size);
            Assert.Equal(3, Runs(dots, letters, 49));
            Assert.Equal("ox…", text.Text);
        }
    }

    private static int Runs(Dots dots, int from, int row) =>
        Enumerable.Range(from, dots.Width - from).Count(x => dots[x, row] && (x == from || !dots[x - 1, row]));
}
