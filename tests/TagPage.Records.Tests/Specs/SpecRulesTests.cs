using TagPage.Core.Sports;
using TagPage.Records.Specs;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Specs;

/// <summary>Which measured numbers are asked about before they are saved.</summary>
public sealed class SpecRulesTests
{
    private static readonly SpecEntry Usual = new() { MeasuredOn = Street.Today, Weight = 305, Balance = 320, SwingWeight = 290, Length = 685 };

    [Fact]
    public void Usual_tennis_racket_raises_no_question() => Assert.Empty(SpecRules.Oddities(Sport.Tennis, Street.Today, Usual));

    [Fact]
    public void Tennis_racket_under_a_badminton_one_is_asked_about_number_by_number() =>
        Assert.Equal(
            [new WeightUnusual(305, Sport.Badminton), new SwingWeightUnusual(290, Sport.Badminton), new MeasuredTooLong(685, Sport.Badminton)],
            SpecRules.Oddities(Sport.Badminton, Street.Today, Usual));

    [Theory]
    [InlineData(259, true)]
    [InlineData(260, false)]
    [InlineData(400, false)]
    [InlineData(401, true)]
    public void Balance_point_outside_the_usual_is_asked_about(int mm, bool asked) =>
        Assert.Equal(asked, SpecRules.Oddities(Sport.Tennis, Street.Today, Usual with { Balance = mm }) is [BalanceUnusual]);

    [Fact]
    public void Day_to_come_is_asked_about()
    {
        var tomorrow = Street.Today.AddDays(1);

        Assert.Equal([new MeasuredInFuture(tomorrow)], SpecRules.Oddities(Sport.Tennis, Street.Today, Usual with { MeasuredOn = tomorrow }));
    }

    [Fact]
    public void Squash_racket_over_255_grams_is_asked_about_with_the_rule()
    {
        // World Squash rules, racket appendix: weight at most 255 g.
        Assert.Equal([new MeasuredTooHeavy(255.1m, Sport.Squash)], SpecRules.Oddities(Sport.Squash, Street.Today, new SpecEntry { MeasuredOn = Street.Today, Weight = 255.1m }));
        Assert.Empty(SpecRules.Oddities(Sport.Squash, Street.Today, new SpecEntry { MeasuredOn = Street.Today, Weight = 255 }));
    }

    [Theory]
    [InlineData(300, 400, 269, 270.0)]
    [InlineData(300, 400, 270, null)]
    [InlineData(305.5, 325, 154.65, 154.659375)]
    public void Swing_weight_below_what_mass_at_the_balance_point_demands_is_asked_about(double grams, int mm, double swing, double? least)
    {
        // By hand: M/1000 · (B − 10)², the parallel-axis theorem with nothing turning about the centre of mass itself.
        var asked = SpecRules.Oddities(Sport.Tennis, Street.Today, new SpecEntry { MeasuredOn = Street.Today, Weight = (decimal)grams, Balance = mm, SwingWeight = (decimal)swing });

        Assert.Equal(least is null ? [] : [new SwingWeightTooSmall((decimal)swing, (decimal)least) { Grams = (decimal)grams, BalanceMm = mm }], asked.OfType<SwingWeightTooSmall>());
    }

    [Fact]
    public void Balance_point_beyond_the_tip_is_asked_about()
    {
        var entry = new SpecEntry { MeasuredOn = Street.Today, Balance = 390, Length = 390 };

        Assert.Equal([new BalanceBeyondTip(390, 390)], SpecRules.Oddities(Sport.Tennis, Street.Today, entry));
        Assert.Empty(SpecRules.Oddities(Sport.Tennis, Street.Today, entry with { Length = 391 }));
    }

    [Fact]
    public void Numbers_that_were_not_measured_raise_no_question() =>
        Assert.Empty(SpecRules.Oddities(Sport.Squash, Street.Today, new SpecEntry { MeasuredOn = Street.Today, Weight = 140 }));
}
