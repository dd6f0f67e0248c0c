using TagPage.Labels.Content;
using TagPage.Labels.Layout;
using TagPage.Labels.Tests.Cast;

namespace TagPage.Labels.Tests.Layout;

/// <summary>The label for the bag of a ticket that waits.</summary>
public class WaitingTests
{
    private static readonly WaitingFacts WithWish = Samples.Waiting with { Mains = new StringFact("Corvane Tour Soft Touch", "1.25"), Crosses = new StringFact("Heron Natural Classic", "1.30"), Wish = "strings: Corvane Tour 1.25 please, and a little softer than last time" };

    [Theory]
    [InlineData(12)]
    [InlineData(18)]
    [InlineData(24)]
    [InlineData(36)]
    public void Gauges_are_whole_whatever_the_client_wishes(int tape)
    {
        var words = Samples.Lay(Purposes.Waiting(WithWish, Samples.Tag), Samples.Stock(tape, 180)).Words;

        Assert.Contains(words, text => text.EndsWith(" 1.25", StringComparison.Ordinal) && text.StartsWith("Corvane", StringComparison.Ordinal));
        Assert.Contains(words, text => text.EndsWith(" 1.30", StringComparison.Ordinal) && text.StartsWith("/ Heron", StringComparison.Ordinal));
        Assert.Contains("Ticket 1926", words);
        Assert.Contains("Promised 1 Dec 2026", words);
    }

    [Fact]
    public void Its_number_is_no_smaller_on_wider_tape_and_larger_on_the_widest()
    {
        var sizes = ((int[])[12, 18, 24, 36]).Select(tape => Samples.Lay(Purposes.Waiting(Samples.Waiting, Samples.Tag), Samples.Stock(tape, 180)).Pieces.OfType<TextPiece>().Single(piece => piece.Text.Text == "1926").Size).ToList();

        Assert.Equal(sizes.Order(), sizes);
        Assert.True(sizes[^1] > sizes[0], string.Join(", ", sizes));
    }

    [Fact]
    public void A_wish_of_many_words_breaks_into_few_parts_and_loses_none()
    {
        var wish = string.Join(' ', Enumerable.Range(1, 120).Select(number => $"word{number}"));

        var parts = LabelLine.Words(wish);

        Assert.InRange(parts.Count, 2, 8);
        Assert.Equal(wish, string.Concat(parts));
    }
}
