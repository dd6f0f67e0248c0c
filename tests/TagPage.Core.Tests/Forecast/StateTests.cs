using TagPage.Core.Forecast;
using TagPage.Core.Rackets;

namespace TagPage.Core.Tests.Forecast;

public class StateTests
{
    [Theory]
    // Due after 28 days: the last third is 9 whole days.
    [InlineData(28, 0, RestringState.Good)]
    [InlineData(28, 18, RestringState.Good)]
    [InlineData(28, 19, RestringState.DueSoon)]
    [InlineData(28, 28, RestringState.DueSoon)]
    [InlineData(28, 29, RestringState.Past)]
    // Due after 30 days: exactly the last third.
    [InlineData(30, 19, RestringState.Good)]
    [InlineData(30, 20, RestringState.DueSoon)]
    // Due after 182 days: the last 14 days are shorter.
    [InlineData(182, 167, RestringState.Good)]
    [InlineData(182, 168, RestringState.DueSoon)]
    [InlineData(182, 183, RestringState.Past)]
    // Due on the day of stringing.
    [InlineData(0, 0, RestringState.DueSoon)]
    [InlineData(0, 1, RestringState.Past)]
    public void Due_soon_is_the_last_14_days_or_the_last_third_whichever_is_shorter(
        int interval, int daysIn, RestringState expected)
    {
        var forecast = (Case.Racket with { OwnersDate = Case.Strung.AddDays(interval) }).AfterDays(daysIn);
        Assert.Equal(expected, forecast.State);
        Assert.Equal(interval - daysIn, forecast.DaysLeft);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(7, 0.75)]
    [InlineData(21, 0.25)]
    [InlineData(28, 0)]
    [InlineData(500, 0)]
    public void Life_left_is_the_days_left_over_the_whole_interval(int daysIn, double expected) =>
        Assert.Equal(expected, Case.Racket.AfterDays(daysIn).LifeLeft, 12);

    [Fact]
    public void Strings_due_on_the_very_day_they_went_in_are_whole_that_day_and_used_up_the_next()
    {
        var atOnce = Case.Racket with { OwnersDate = Case.Strung };
        Assert.Equal((1, 0), (atOnce.AfterDays(0).LifeLeft, atOnce.AfterDays(1).LifeLeft));
    }

    [Fact]
    public void The_shop_can_move_what_due_soon_means()
    {
        var values = StartingValues.Default with { DueSoon = new DueSoonValues { Days = 2, LastOneIn = 1 } };
        Assert.Equal(RestringState.Good, RestringForecast.Work(Case.Racket, Case.Strung.AddDays(25), values).State);
        Assert.Equal(RestringState.DueSoon, RestringForecast.Work(Case.Racket, Case.Strung.AddDays(26), values).State);
    }

    [Theory]
    [InlineData(RacketState.InTurn, true, true, RestringState.NoStrings)]
    [InlineData(RacketState.Spare, true, true, RestringState.NoStrings)]
    [InlineData(RacketState.InTurn, false, false, RestringState.NotStrungYet)]
    [InlineData(RacketState.InTurn, false, true, RestringState.NoStrings)]
    [InlineData(RacketState.Resting, true, false, RestringState.NotInPlay)]
    [InlineData(RacketState.Damaged, true, true, RestringState.NotInPlay)]
    [InlineData(RacketState.Sold, false, false, RestringState.NotInPlay)]
    [InlineData(RacketState.Gone, true, false, RestringState.NotInPlay)]
    public void A_racket_without_strings_or_out_of_play_has_no_date(
        RacketState racket, bool strung, bool ended, RestringState expected)
    {
        var forecast = (Case.Racket with
        {
            Racket = racket,
            StrungOn = strung ? Case.Strung : null,
            BedEndedOn = ended ? Case.Strung.AddDays(5) : null,
            OwnersDate = Case.Strung.AddDays(60),
        }).AfterDays(10);
        Assert.Equal(expected, forecast.State);
        Assert.Equal((null, null, null, 0), (forecast.Due, forecast.DecidedBy, forecast.DaysLeft, forecast.LifeLeft));
        Assert.Empty(forecast.Limits);
    }
}
