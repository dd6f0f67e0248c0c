using TagPage.Core.Rackets;
using TagPage.Core.Sports;
using TagPage.Records.Rackets;

namespace TagPage.Records.Tests.Rackets;

/// <summary>What about a racket is asked about before it is saved.</summary>
public sealed class RacketRulesTests
{
    [Theory]
    [InlineData(Sport.Tennis, "73.7", false)]
    [InlineData(Sport.Tennis, "73.8", true)]
    [InlineData(Sport.Badminton, "68", false)]
    [InlineData(Sport.Badminton, "68.1", true)]
    [InlineData(Sport.Squash, "68.6", false)]
    [InlineData(Sport.Squash, "68.7", true)]
    public void Frame_longer_than_its_sport_allows_is_asked_about(Sport sport, string cm, bool asked) =>
        Assert.Equal(asked, RacketRules.Oddities(new RacketEntry { Sport = sport, LengthCm = Number(cm) }) is [FrameTooLong]);

    [Theory]
    [InlineData("98", "in2", false)]
    [InlineData("98", "cm2", true)]
    [InlineData("500", "cm2", false)]
    [InlineData("500", "in2", true)]
    [InlineData("900", "cm2", false)]
    [InlineData("900.1", "cm2", true)]
    [InlineData("250", "cm2", false)]
    [InlineData("249.9", "cm2", true)]
    public void Head_in_the_wrong_unit_is_asked_about(string size, string unit, bool asked) =>
        Assert.Equal(asked, RacketRules.Oddities(new RacketEntry { HeadSize = Number(size), HeadSizeUnit = unit }) is [HeadUnusual]);

    [Theory]
    [InlineData(RacketState.Sold, true, true)]
    [InlineData(RacketState.Sold, false, false)]
    [InlineData(RacketState.Spare, true, false)]
    public void Sale_of_a_racket_with_a_live_tag_is_asked_about(RacketState state, bool isTagged, bool asked) =>
        Assert.Equal(asked, RacketRules.Oddities(new RacketEntry { State = state }, isTagged) is [SoldWithTag]);

    [Fact]
    public void Racket_of_which_nothing_was_measured_raises_no_question() => Assert.Empty(RacketRules.Oddities(new RacketEntry()));

    private static decimal Number(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
