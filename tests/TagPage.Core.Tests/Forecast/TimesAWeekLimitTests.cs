using System.Globalization;
using TagPage.Core.Forecast;
using TagPage.Core.Players;
using TagPage.Core.Rackets;

namespace TagPage.Core.Tests.Forecast;

public class TimesAWeekLimitTests
{
    // As many restrings a year as times played a week, at least two (common practice, no source);
    // the dates were counted apart from this code.
    [Theory]
    [InlineData("0", "2026-08-31", 182)]
    [InlineData("1", "2026-08-31", 182)]
    [InlineData("2", "2026-08-31", 182)]
    [InlineData("2.5", "2026-07-26", 146)]
    [InlineData("3", "2026-07-01", 121)]
    [InlineData("5", "2026-05-14", 73)]
    [InlineData("21", "2026-03-19", 17)]
    public void A_racket_is_due_as_often_a_year_as_it_is_played_a_week(string times, string due, int interval)
    {
        var play = new Play(decimal.Parse(times, CultureInfo.InvariantCulture), 1, Hitting.Average);
        var limit = (Case.Racket with { Play = play }).AfterDays(0).Limit<TimesAWeekLimit>();
        Assert.Equal(DateOnly.Parse(due, CultureInfo.InvariantCulture), limit.Day);
        Assert.Equal(interval, limit.Interval);
    }

    [Fact]
    public void Shares_that_are_not_exact_numbers_do_not_cost_a_day()
    {
        // By hand: 21 times over four in turn and two spares are 21 / 4.2 = 5 times each in turn, so 365 / 5 = 73 days;
        // and once a week over five rackets at 1.5 h are 0.3 h a week, so 7 · 18 / 0.3 = 420 days.
        RacketState[] six = [.. Enumerable.Repeat(RacketState.InTurn, 4), RacketState.Spare, RacketState.Spare];
        var often = Case.Racket with { Play = new Play(21, 1, Hitting.Average), Share = RacketShare.Of(six[0], six, 0.1) };
        Assert.Equal(73, often.AfterDays(0).Limit<TimesAWeekLimit>().Interval);
        var seldom = Case.Racket with { Play = new Play(1, 1.5m, Hitting.Average), Share = 1 / 5.0 };
        Assert.Equal(420, seldom.AfterDays(0).Limit<HoursLimit>().Interval);
    }
}
