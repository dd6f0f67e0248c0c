using TagPage.Labels.Content;
using TagPage.Labels.Geometry;
using TagPage.Labels.Layout;
using TagPage.Labels.Tests.Cast;

namespace TagPage.Labels.Tests.Layout;

/// <summary>Where whose a racket is stands: never where it would be read as part of something else, never first without being asked to.</summary>
public class NamePlaceTests
{
    [Fact]
    public void Name_never_stands_behind_what_was_measured()
    {
        foreach (var name in (string[])["Jürgen", "Rashid", "Bảo Châu", "Ruaridh", "澪"])
        {
            var content = Purposes.Measures(Samples.Measures with { Measured = "23 Sep 2025, unstrung", Whose = name }, Samples.Tag);
            foreach (var type in Tape.Widths.SelectMany(tape => Rows(Layouter.Lay(content, Samples.Stock(tape, 180)))))
                Assert.True(type.Before is null || type.Before.StartsWith("Racket", StringComparison.Ordinal) || type.Text != name, $"{type.Before} {type.Text}");
        }
    }

    [Fact]
    public void Name_never_stands_over_the_tension_without_being_asked_to_lead()
    {
        List<string> faults = [];
        foreach (var facts in DemoRackets.All.Select(racket => racket.Facts).Where(facts => facts is { NameLeads: false, Whose.Length: > 0 }))
        {
            foreach (var tape in Tape.Widths)
            {
                var type = Samples.Lay(Purposes.Done(facts, Samples.Tag), Samples.Stock(tape, 180)).Pieces.OfType<TextPiece>().ToList();
                if (type.SingleOrDefault(piece => piece.Text.Text == facts.Whose) is { } name && type.SingleOrDefault(piece => piece.Text.Text == facts.Tension) is { } tension && name.Baseline < tension.Baseline && name.X < tension.X + tension.Width)
                    faults.Add($"{facts.Whose} over {facts.Tension} on {tape} mm");
            }
        }
        Assert.True(faults.Count == 0, string.Join("\n", faults));
    }

    [Fact]
    public void Short_name_gets_no_column_of_its_own_where_it_fits_behind_the_day()
    {
        var facts = Samples.Done with { Tension = "11 / 11.5", Unit = "kg", Mains = new StringFact("Pintleford Whisk", "0.66"), Crosses = new StringFact("", ""), RestringBy = "26 Dec 2026", Strung = "8 Oct 2026", Reading = "1068", Instrument = "phone pitch, Hz", Whose = "澪" };

        var label = Layouter.Lay(Purposes.Done(facts, Samples.Tag), Samples.Stock(12, 180));

        Assert.Contains(Rows(label), type => type.Text == "澪" && type.Before!.EndsWith("8 Oct 2026", StringComparison.Ordinal));
        Assert.True(label.LengthMm <= 56, $"{label.LengthMm:0.0} mm");
    }

    [Fact]
    public void Words_that_lead_to_the_square_are_whole_or_left_out()
    {
        foreach (var facts in DemoRackets.All.Select(racket => racket.Facts with { NameLeads = true }))
        {
            foreach (var tape in Tape.Widths)
                Assert.DoesNotContain(Layouter.Lay(Purposes.Done(facts, Samples.Tag with { InWords = true }), Samples.Stock(tape, 180)).Words, words => words.StartsWith("Scan", StringComparison.Ordinal) && words.EndsWith('…'));
        }
    }

    /// <summary>Each text with the one that stands before it in its row.</summary>
    private static IEnumerable<(string? Before, string Text)> Rows(LaidLabel label)
    {
        foreach (var row in label.Pieces.OfType<TextPiece>().GroupBy(piece => piece.Baseline).Select(row => row.OrderBy(piece => piece.X).ToList()))
        {
            for (var i = 0; i < row.Count; i++)
                yield return (i == 0 ? null : row[i - 1].Text.Text, row[i].Text.Text);
        }
    }
}
