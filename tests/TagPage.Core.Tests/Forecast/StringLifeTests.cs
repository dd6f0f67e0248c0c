using CsCheck;
using TagPage.Core.Forecast;

namespace TagPage.Core.Tests.Forecast;

public class StringLifeTests
{
    [Theory]
    [InlineData(16, 1, "||||||||||||||||")]
    [InlineData(16, 0.5, "....||||||||....")]
    [InlineData(16, 0.33, ".....|||||......")]
    [InlineData(16, 0.001, ".......|........")]
    [InlineData(16, 0, "................")]
    [InlineData(9, 0.34, "...|||...")]
    [InlineData(1, 0.2, "|")]
    [InlineData(4, double.NaN, "....")]
    [InlineData(4, 99, "||||")]
    public void Strokes_are_used_up_from_the_outside_in(int strokes, double lifeLeft, string expected) =>
        Assert.Equal(expected, Draw(StringLife.Good(strokes, lifeLeft)));

    [Fact]
    public void The_good_strokes_stand_together_in_the_middle_and_match_what_is_left() =>
        Gen.Select(Gen.Int[1, StringLife.MostStrokes], Gen.Double[0, 1]).Sample((strokes, left) =>
        {
            var drawn = Draw(StringLife.Good(strokes, left));
            var good = drawn.Count(c => c == '|');
            var (before, after) = (drawn.IndexOf('|'), drawn.Length - 1 - drawn.LastIndexOf('|'));
            return Math.Abs(good - left * strokes) <= (good == 1 ? 1 : 0.5 + 1e-9)
                && (good > 0) == (left > 0)
                && (good == 0 || (after - before is 0 or 1 && before + good + after == strokes));
        });

    [Fact]
    public void A_used_stroke_is_never_good_again() =>
        Gen.Select(Gen.Int[1, StringLife.MostStrokes], Gen.Double[0, 1], Gen.Double[0, 1]).Sample((strokes, a, b) =>
            StringLife.Good(strokes, Math.Max(a, b)).Zip(StringLife.Good(strokes, Math.Min(a, b)))
                .All(stroke => stroke.First || !stroke.Second));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(61)]
    public void Nobody_draws_no_strokes_or_thousands(int strokes) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StringLife.Good(strokes, 0.5));

    private static string Draw(IReadOnlyList<bool> strokes) => string.Concat(strokes.Select(good => good ? '|' : '.'));
}
