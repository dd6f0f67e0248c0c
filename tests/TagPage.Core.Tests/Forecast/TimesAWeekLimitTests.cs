using System.Globalization;
using TagPage.Core.Forecast;
using TagPage.Core.Players;

namespace TagPage.Core.Tests.Forecast;

public class TimesAWeekLimitTests
{
    // As many restrings a year as times played a week, at least two (common practice, no source);
    // the dates were counted apart from this code.
    [Theory]
    [InlineData("0", "2026-08-31", "played 0 times a week, at least 2 restrings a year: 182 days")]
    [InlineData("1", "2026-08-31", "played 1 time a week, at least 2 restrings a year: 182 days")]
    [InlineData("2", "2026-08-31", "played 2 times a week, at least 2 restrings a year: 182 days")]
    [InlineData("2.5", "2026-07-26", "as many restrings a year as times played a week (2.5): 146 days")]
    [InlineData("3", "2026-07-01", "as many restrings a year as times played a week (3): 121 days")]
    [InlineData("5", "2026-05-14", "as many restrings a year as times played a week (5): 73 days")]
    [InlineData("21", "2026-03-19", "as many restrings a year as times played a week (21): 17 days")]
    public void A_racket_is_due_as_often_a_year_as_it_is_played_a_week(string times, string due, string why)
    {
        var play = new Play(decimal.Parse(times, CultureInfo.InvariantCulture), 1, Hitting.Average);
        var limit = (Case.Racket with { Play = play }).AfterDays(0).Limit<TimesAWeekLimit>();
        Assert.Equal(DateOnly.Parse(due, CultureInfo.InvariantCulture), limit.Day);
        Assert.Equal(why, limit.Why);
    }

    [Fact]
    public void Shares_that_are_not_exact_numbers_do_not_cost_a_day()
    {
        // 35 times shared by seven rackets is five times each: 73 days exactly.
        var seven = Enumerable.Repeat(TagPage.Core.Rackets.RacketState.InTurn, 7).ToList();
        var share = RacketShare.Of(seven[0], seven, 0.1);
        var limit = (Case.Racket with { Play = new Play(35, 1, Hitting.Average), Share = share })
            .AfterDays(0).Limit<TimesAWeekLimit>();
        Assert.Equal(73, limit.Interval);
    }
}
