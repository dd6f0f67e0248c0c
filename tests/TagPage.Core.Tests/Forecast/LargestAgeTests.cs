using TagPage.Core.Forecast;
using TagPage.Core.Players;

namespace TagPage.Core.Tests.Forecast;

public class LargestAgeTests
{
    private static readonly ForecastInput Paused = Case.Racket with { Pauses = [new Pause(Case.Strung.AddDays(5), null)] };

    [Theory]
    [InlineData(RestringRule.Hours)]
    [InlineData(RestringRule.TimesAWeek)]
    [InlineData(RestringRule.WhicheverFirst)]
    [InlineData(RestringRule.EveryWeeks)]
    [InlineData(RestringRule.FixedDate)]
    [InlineData(null)]
    public void Under_every_rule_strings_get_no_older_than_a_year(RestringRule? rule)
    {
        var hardlyPlayed = Paused with { Rule = rule, EveryWeeks = 104, Play = new Play(0.1m, 0.1m, Hitting.Easy) };
        Assert.InRange(hardlyPlayed.AfterDays(10).Due!.Value.DayNumber - Case.Strung.DayNumber, 1, 365);
    }

    [Fact]
    public void The_owners_date_may_lie_beyond_it() =>
        Assert.Equal(Case.Strung.AddDays(400), (Paused with { Rule = RestringRule.FixedDate, OwnersDate = Case.Strung.AddDays(400) }).AfterDays(10).Due);
}
