using TagPage.Core.Forecast;
using TagPage.Core.Players;
using TagPage.Core.Strings;

namespace TagPage.Core.Tests.Forecast;

/// <summary>The racket's limits: hours on 30 March (28 days), times a week on 1 July (121 days).</summary>
public class RuleTests
{
    private static readonly DateOnly ByHours = new(2026, 3, 30);
    private static readonly DateOnly ByTimes = new(2026, 7, 1);

    [Theory]
    [InlineData(RestringRule.WhicheverFirst, LimitKind.Hours, 28)]
    [InlineData(RestringRule.Hours, LimitKind.Hours, 28)]
    [InlineData(RestringRule.TimesAWeek, LimitKind.TimesAWeek, 121)]
    [InlineData(RestringRule.EveryWeeks, LimitKind.EveryWeeks, 42)]
    public void The_rule_says_which_limits_count_and_the_earliest_of_them_decides(
        RestringRule rule, LimitKind decidedBy, int days)
    {
        var forecast = (Case.Racket with { Rule = rule, EveryWeeks = 6 }).AfterDays(0);
        Assert.Equal((decidedBy, Case.Strung.AddDays(days)), (forecast.DecidedBy, forecast.Due));
        Assert.Equal(6, forecast.Limit<EveryWeeksLimit>().Weeks);
    }

    [Theory]
    [InlineData(1, 7, 1)]
    [InlineData(104, 728, 104)]
    [InlineData(int.MaxValue, 728, 104)]
    public void Every_N_weeks_takes_from_one_week_to_two_years(int weeks, int days, int counted)
    {
        var forecast = (Case.Racket with { Rule = RestringRule.EveryWeeks, EveryWeeks = weeks }).AfterDays(0);
        Assert.Equal(Case.Strung.AddDays(days), forecast.Limit<EveryWeeksLimit>().Day);
        Assert.Equal(counted, forecast.Limit<EveryWeeksLimit>().Weeks);
    }

    [Theory]
    [InlineData(Material.Polyester, 1)]
    [InlineData(Material.NaturalGut, 1)]
    [InlineData(Material.SyntheticGut, 5)]
    public void Without_a_rule_whichever_comes_first_counts_for_everybody(Material mains, int times)
    {
        var racket = Case.Racket with { Bed = Case.Of(mains, 1.30m), Play = new Play(times, 1, Hitting.Average) };
        var (without, first) = (racket.AfterDays(0), (racket with { Rule = RestringRule.WhicheverFirst }).AfterDays(0));
        Assert.Equal(first.Due, without.Due);
        Assert.Equal(first.Limits.Select(limit => limit.Counts), without.Limits.Select(limit => limit.Counts));
    }

    [Theory]
    [InlineData(null, null)]
    [InlineData(RestringRule.FixedDate, null)]
    [InlineData(RestringRule.EveryWeeks, null)]
    [InlineData(RestringRule.EveryWeeks, 0)]
    [InlineData(RestringRule.EveryWeeks, -4)]
    public void A_rule_that_lacks_its_number_or_date_falls_back_to_whichever_comes_first(RestringRule? rule, int? weeks)
    {
        var forecast = (Case.Racket with { Rule = rule, EveryWeeks = weeks }).AfterDays(0);
        Assert.Equal((LimitKind.Hours, ByHours), (forecast.DecidedBy, forecast.Due));
        Assert.True(forecast.Limit<TimesAWeekLimit>().Counts);
    }

    [Theory]
    [InlineData(Material.NaturalGut)]
    [InlineData(Material.Multifilament)]
    [InlineData(Material.Polyester)]
    public void A_tenth_of_a_time_more_a_week_does_not_change_the_rule(Material mains)
    {
        var soft = Case.Racket with { Bed = Case.Of(mains, 1.30m) };
        var (less, more) = (Due(2.9m), Due(3.0m));
        Assert.InRange(less.DayNumber - more.DayNumber, 0, 4);

        DateOnly Due(decimal times) => (soft with { Play = new Play(times, 2, Hitting.Average) }).AfterDays(0).Due!.Value;
    }

    [Fact]
    public void Hours_alone_without_any_play_leave_it_to_the_times_a_week()
    {
        var idle = Case.Racket with { Rule = RestringRule.Hours, Play = new Play(0, 0, Hitting.Hard) };
        var forecast = idle.AfterDays(0);
        Assert.Equal((LimitKind.TimesAWeek, Case.Strung.AddDays(182)), (forecast.DecidedBy, forecast.Due));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(400)]
    public void The_owners_date_overrules_every_rule(int days)
    {
        foreach (var rule in Enum.GetValues<RestringRule>())
        {
            var date = Case.Strung.AddDays(days);
            var forecast = (Case.Racket with { Rule = rule, EveryWeeks = 1, OwnersDate = date }).AfterDays(0);
            Assert.Equal((LimitKind.OwnersDate, date), (forecast.DecidedBy, forecast.Due));
            Assert.False(Assert.IsType<OwnersDateLimit>(forecast.Limits.Single(limit => limit.Counts)).IsLeftOver);
        }
    }

    [Fact]
    public void A_date_chosen_for_earlier_strings_has_no_say()
    {
        var forecast = (Case.Racket with { OwnersDate = Case.Strung.AddDays(-1) }).AfterDays(0);
        Assert.Equal((LimitKind.Hours, ByHours), (forecast.DecidedBy, forecast.Due));
        Assert.False(forecast.Limit<OwnersDateLimit>().Counts);
        Assert.True(forecast.Limit<OwnersDateLimit>().IsLeftOver);
    }

    [Fact]
    public void Limits_without_a_say_are_still_shown_with_their_day()
    {
        var forecast = (Case.Racket with { Rule = RestringRule.Hours }).AfterDays(0);
        Assert.Equal((ByTimes, false), (forecast.Limit<TimesAWeekLimit>().Day, forecast.Limit<TimesAWeekLimit>().Counts));
    }
}
