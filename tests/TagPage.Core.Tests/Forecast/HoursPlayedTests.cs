using CsCheck;
using TagPage.Core.Forecast;
using TagPage.Core.Players;

namespace TagPage.Core.Tests.Forecast;

/// <summary>A racket played 7 hours a week, an hour a day, whose strings last 18 hours.</summary>
public class HoursPlayedTests
{
    private static readonly ForecastInput Daily = Case.Racket with { Play = new Play(7, 1, Hitting.Average), Rule = RestringRule.Hours };

    [Fact]
    public void A_pause_adds_its_days_and_no_hours()
    {
        var paused = Daily with { Pauses = [Days(5, 9)] };
        Assert.Equal(Case.Strung.AddDays(18 + 5), paused.AfterDays(0).Due);
        Assert.Equal([5, 5, 6], At(paused, 5, 10, 11));
    }

    [Fact]
    public void Pauses_that_overlap_count_once_and_one_before_the_stringing_not_at_all()
    {
        var paused = Daily with { Pauses = [Days(7, 12), Days(5, 9), Days(-20, -3)] };
        Assert.Equal(Case.Strung.AddDays(18 + 8), paused.AfterDays(0).Due);
    }

    [Fact]
    public void A_pause_without_an_end_leaves_the_date_to_age()
    {
        var paused = Daily with { Rule = RestringRule.WhicheverFirst, Pauses = [new Pause(Case.Strung.AddDays(5), null)] };
        var hours = paused.AfterDays(6).Limit<HoursLimit>();
        Assert.Equal((null, true), (hours.Day, hours.StandsStill));
        Assert.True(paused.AfterDays(6).Limit<TensionLimit>().TakesOverTwoYears);
        Assert.Equal(LimitKind.TimesAWeek, paused.AfterDays(6).DecidedBy);
        // By hours alone it stays by hours: a pause brings in no other rule.
        var byHours = (paused with { Rule = RestringRule.Hours }).AfterDays(6);
        Assert.Equal((LimitKind.Age, Case.Strung.AddDays(365)), (byHours.DecidedBy, byHours.Due));
    }

    [Fact]
    public void Hours_that_were_used_up_before_a_pause_without_an_end_keep_their_day()
    {
        var late = Daily with { Pauses = [new Pause(Case.Strung.AddDays(18), null)] };
        Assert.Equal(Case.Strung.AddDays(18), late.AfterDays(30).Due);
    }

    [Fact]
    public void Play_is_paused_from_the_first_day_of_a_pause_without_an_end()
    {
        var open = Daily with { Pauses = [new Pause(Case.Strung.AddDays(5), null)] };
        Assert.False(open.AfterDays(4).PlayIsPaused);
        Assert.True(open.AfterDays(5).PlayIsPaused);
        Assert.True(open.AfterDays(400).PlayIsPaused);
        Assert.False((Daily with { Pauses = [Days(5, 9)] }).AfterDays(7).PlayIsPaused);
    }

    [Fact]
    public void Notes_stand_for_their_week_and_the_habit_for_the_days_to_come()
    {
        var logged = Daily with { Logged = [new LoggedHours(Case.Strung.AddDays(2), 3), new LoggedHours(Case.Strung.AddDays(10), 6)] };
        // Days 0 to 6 and 7 to 13 are noted weeks. 18 − 9 = 9 hours are left on day 10, an hour a day.
        Assert.Equal(Case.Strung.AddDays(19), logged.AfterDays(10).Due);
        Assert.Equal(Case.Strung.AddDays(23), logged.AfterDays(14).Due);
        Assert.Equal(Case.Strung.AddDays(23), logged.AfterDays(20).Due);
        // On day 5 the second entry lies ahead: 3 hours so far.
        Assert.Equal(Case.Strung.AddDays(20), logged.AfterDays(5).Due);
        Assert.Equal(9, logged.AfterDays(14).Limit<HoursLimit>().SoFar);
        Assert.Null(Daily.AfterDays(14).Limit<HoursLimit>().SoFar);
    }

    [Fact]
    public void Hours_logged_for_earlier_strings_do_not_count() =>
        Assert.Equal(Case.Strung.AddDays(18), (Daily with { Logged = [new LoggedHours(Case.Strung.AddDays(-1), 12)] }).AfterDays(10).Due);

    [Fact]
    public void Strings_used_up_by_notes_were_due_as_many_days_of_play_ago_as_they_are_over()
    {
        var logged = Daily with { Logged = [new LoggedHours(Case.Strung.AddDays(4), 12), new LoggedHours(Case.Strung.AddDays(8), 12)] };
        // 40 hours by day 30, an hour a day: 22 days ago.
        Assert.Equal(Case.Strung.AddDays(8), logged.AfterDays(30).Due);
        // 24 hours by day 8 would be 6 days ago; but by the end of the first week, 12 of 18 were played.
        Assert.Equal(Case.Strung.AddDays(7), logged.AfterDays(8).Due);
        Assert.Equal(Case.Strung, (Daily with { Logged = [new LoggedHours(Case.Strung, 100)] }).AfterDays(3).Due);
    }

    [Fact]
    public void With_nothing_logged_the_date_does_not_move_with_the_day_one_looks_whatever_the_pauses() =>
        Gen.Select(Gaps.Array[0, 4], Gen.Int[0, 200], Gen.Double[0.2, 14]).Sample((pauses, days, week) =>
        {
            var racket = Daily with { Pauses = pauses, Play = new Play((decimal)week, 1, Hitting.Average), Rule = RestringRule.WhicheverFirst };
            return racket.AfterDays(days).Due == racket.AfterDays(0).Due;
        });

    [Fact]
    public void A_pause_never_moves_the_date_earlier() =>
        Gen.Select(Gaps.Array[0, 4], Gaps).Sample((pauses, one) =>
            (Daily with { Pauses = [.. pauses, one] }).AfterDays(0).Due >= (Daily with { Pauses = pauses }).AfterDays(0).Due);

    private static readonly Gen<Pause> Gaps = Gen.Select(Gen.Int[-10, 60], Gen.Int[0, 20]).Select((from, days) => Days(from, from + days));

    private static Pause Days(int from, int to) => new(Case.Strung.AddDays(from), Case.Strung.AddDays(to));

    private static IEnumerable<double> At(ForecastInput racket, params int[] days)
    {
        var played = HoursPlayed.Of(racket, Case.Strung, Case.Strung);
        return days.Select(day => Math.Round(played.By(Case.Strung.AddDays(day)), 9));
    }
}
