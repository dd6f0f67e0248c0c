using CsCheck;
using TagPage.Core.Forecast;
using TagPage.Core.Players;
using TagPage.Core.Rackets;

namespace TagPage.Core.Tests.Forecast;

/// <summary>An hour of play a day, shared by two rackets until one of them is passed on; the strings last 18 hours.</summary>
public class EarlierShareTests
{
    private static readonly ForecastInput Daily = Case.Racket with { Play = new Play(7, 1, Hitting.Average), Rule = RestringRule.Hours };

    private static ForecastInput Shared(int until, ForecastInput? of = null) =>
        (of ?? Daily) with { EarlierShares = [new EarlierShare(Case.Strung.AddDays(until), 0.5)] };

    [Fact]
    public void Days_before_count_half_and_days_after_in_full()
    {
        var played = HoursPlayed.Of(Shared(20), Case.Strung, Case.Strung.AddDays(25));

        Assert.Equal((5.0, 10.0, 11.0, 18.0), (By(10), By(20), By(21), By(28)));
        Assert.Equal(Case.Strung.AddDays(28), Shared(20).AfterDays(25).Due);

        double By(int day) => played.By(Case.Strung.AddDays(day));
    }

    [Theory]
    [InlineData(36)]
    [InlineData(37)]
    [InlineData(90)]
    public void Date_that_was_past_when_the_other_racket_left_stays(int left) =>
        Assert.Equal(Case.Strung.AddDays(36), Shared(left).AfterDays(100).Due);

    [Fact]
    public void Change_of_today_makes_nothing_due_before_today()
    {
        foreach (var rule in new[] { RestringRule.Hours, RestringRule.TimesAWeek, RestringRule.WhicheverFirst })
        {
            var before = Daily with { Rule = rule, Share = 0.5 };
            for (var day = 1; day < 120; day++)
            {
                var (was, isNow) = (before.AfterDays(day).Due!.Value, (Shared(day, Daily with { Rule = rule })).AfterDays(day).Due!.Value);
                var today = Case.Strung.AddDays(day);
                Assert.True(was < today ? isNow == was : isNow >= today, $"{rule}, day {day}: {was} became {isNow}");
            }
        }
    }

    [Fact]
    public void One_that_left_before_the_strings_went_in_took_no_part() =>
        Assert.Equal(Daily.AfterDays(5).Due, Shared(-3).AfterDays(5).Due);

    [Fact]
    public void Several_leave_one_after_the_other()
    {
        var shares = EarlierShare.Of(RacketState.InTurn, [RacketState.InTurn],
            [new LeftPlay(2, Case.Strung.AddDays(10), RacketState.InTurn), new LeftPlay(3, Case.Strung.AddDays(4), RacketState.InTurn)], 0.1);

        Assert.Equal([(Case.Strung.AddDays(4), 1 / 3.0), (Case.Strung.AddDays(10), 0.5)], shares.Select(s => (s.Until, s.Share)));
        Assert.Equal((4 / 3.0) + 3 + 2, HoursPlayed.Of(Daily with { EarlierShares = shares }, Case.Strung, Case.Strung.AddDays(12)).By(Case.Strung.AddDays(12)), 9);
    }

    [Fact]
    public void Hours_add_up_day_by_day_whatever_was_paused()
    {
        Gen.Select(Gen.Int[1, 60], Gen.Int[0, 60], Gen.Int[0, 20], Gen.Int[0, 90]).Sample((until, from, days, day) =>
        {
            var pause = new Pause(Case.Strung.AddDays(from), Case.Strung.AddDays(from + days));
            var byHand = Enumerable.Range(0, day).Where(d => d < from || d > from + days).Sum(d => d < until ? 0.5 : 1);
            var played = HoursPlayed.Of(Shared(until, Daily with { Pauses = [pause] }), Case.Strung, Case.Strung.AddDays(day));
            return Math.Abs(played.By(Case.Strung.AddDays(day)) - byHand) < 1e-9;
        });
    }

    [Fact]
    public void Noted_weeks_count_their_notes_on_both_sides_of_the_day()
    {
        // 2 March 2026 is a Monday: the notes lie in the first and the fourth week, the other racket leaves in the third.
        var noted = Shared(16, Daily with { Logged = [new LoggedHours(Case.Strung.AddDays(2), 3), new LoggedHours(Case.Strung.AddDays(22), 1)] });

        var played = HoursPlayed.Of(noted, Case.Strung, Case.Strung.AddDays(30));

        Assert.Equal(3 + (9 * 0.5) + 5 + 1 + 2, played.By(Case.Strung.AddDays(30)), 9);
    }
}
