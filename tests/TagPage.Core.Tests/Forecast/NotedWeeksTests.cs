using CsCheck;
using TagPage.Core.Forecast;
using TagPage.Core.Players;

namespace TagPage.Core.Tests.Forecast;

/// <summary>
/// Weeks from Monday to Sunday: a week with notes counts its notes, a week without counts the habit. A racket strung on
/// Monday, 2 November 2026, played 3.5 hours a week; the sums were added up by hand, week by week.
/// </summary>
public class NotedWeeksTests
{
    private static readonly DateOnly Monday = new(2026, 11, 2);
    private static readonly DateOnly Friday = new(2026, 11, 27);

    private static readonly ForecastInput Racket = Case.Racket with
    {
        StrungOn = Monday,
        Play = new Play(3.5m, 1, Hitting.Average),
        Rule = RestringRule.Hours,
    };

    [Fact]
    public void Nothing_noted_is_the_habit_for_25_days() => Assert.Equal(12.5, Hours(), 9);

    [Fact]
    public void A_note_stands_for_its_own_week_alone() => Assert.Equal(12, Hours(Noted(25, 1.5)), 9);

    [Fact]
    public void Nothing_played_is_a_note_too() => Assert.Equal(8.5, Hours(Noted(25, 1.5), Noted(10, 0)), 9);

    [Fact]
    public void More_than_the_habit_counts_as_noted() => Assert.Equal(14.5, Hours(Noted(25, 1.5), Noted(10, 6)), 9);

    [Fact]
    public void A_week_in_a_pause_counts_nothing() =>
        Assert.Equal(9, Hours(Racket with { Pauses = [new Pause(Day(9), Day(15))] }), 9);

    [Fact]
    public void After_today_the_habit_goes_on_in_a_noted_week_too()
    {
        var played = HoursPlayed.Of(Racket with { Logged = [Noted(25, 1.5)] }, Monday, Friday);
        Assert.Equal(12.5, played.By(Day(28)), 9);
        Assert.Equal(13, played.By(Day(29)), 9);
        Assert.Equal(13.5, played.By(Day(30)), 9);
        // Today + ⌊7 · (18 − 12) / 3.5⌋.
        Assert.Equal(Friday.AddDays(12), (Racket with { Logged = [Noted(25, 1.5)] }).On(Friday).Due);
    }

    [Fact]
    public void One_press_of_one_hour_does_not_turn_a_racket_past_its_date_into_a_good_one()
    {
        var today = Racket.On(Monday).Due!.Value.AddDays(6);
        Assert.Equal(RestringState.Past, Racket.On(today).State);
        var pressed = (Racket with { Logged = [new LoggedHours(today, 1)] }).On(today);
        Assert.Equal(RestringState.Past, pressed.State);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(30)]
    [InlineData(100)]
    public void Hours_noted_today_do_not_make_it_due_before_the_week_they_were_played_in(double hours)
    {
        // 12 of 18 hours by Friday, and then a tournament.
        Assert.Equal(Day(23), (Racket with { Logged = [Noted(25, 1.5), new LoggedHours(Friday, hours)] }).On(Friday).Due);
    }

    [Fact]
    public void Racket_past_its_date_keeps_it_whatever_is_noted_later()
    {
        var due = Racket.On(Monday).Due!.Value;
        foreach (var hours in new[] { 0, 1, 3.5, 20 })
            Assert.InRange((Racket with { Logged = [new LoggedHours(due.AddDays(20), hours)] }).On(due.AddDays(20)).Due!.Value, Days.After(due, -6), due);
    }

    [Fact]
    public void A_household_that_forgets_to_note_is_not_taken_to_have_rested()
    {
        var once = Racket with { Logged = [Noted(4, 2)] };
        Assert.Equal(RestringState.Past, once.On(Monday.AddDays(800)).State);
        Assert.Equal((800 / 7.0 * 3.5) - 1.5, HoursPlayed.Of(once, Monday, Monday.AddDays(800)).By(Monday.AddDays(800)), 9);
    }

    [Fact]
    public void Strings_that_went_in_on_a_Thursday_take_only_the_rest_of_that_week()
    {
        var thursday = Racket with { StrungOn = Day(5), Logged = [Noted(3, 5)] };
        // Four days of the first week, 15 of the next ones; what was noted before belongs to the strings before.
        Assert.Equal(11, HoursPlayed.Of(thursday, Day(5), Friday).By(Friday), 9);
        Assert.Equal(10, HoursPlayed.Of(thursday with { Logged = [Noted(3, 5), Noted(8, 1)] }, Day(5), Friday).By(Friday), 9);
    }

    [Fact]
    public void What_was_noted_counts_from_its_day_on()
    {
        var played = HoursPlayed.Of(Racket with { Logged = [Noted(11, 2), Noted(13, 1)] }, Monday, Friday);
        foreach (var (day, hours) in new[] { (9, 3.5), (10, 3.5), (11, 5.5), (13, 6.5), (16, 6.5), (17, 7) })
            Assert.Equal(hours, played.By(Day(day)), 9);
    }

    [Fact]
    public void Hours_never_run_backwards() =>
        Gen.Select(Notes.Array[0, 6], Gaps.Array[0, 3], Gen.Int[0, 200]).Sample((notes, pauses, today) =>
        {
            var played = HoursPlayed.Of(Racket with { Logged = notes, Pauses = pauses }, Monday, Monday.AddDays(today));
            var hours = Enumerable.Range(-3, 260).Select(day => played.By(Monday.AddDays(day))).ToList();
            return hours[0] == 0 && hours.Zip(hours.Skip(1)).All(pair => pair.Second >= pair.First - 1e-9);
        }, iter: 2000);

    [Fact]
    public void One_note_never_takes_away_more_than_a_weeks_habit() =>
        Gen.Select(Notes.Array[0, 5], Notes, Gen.Int[0, 200]).Sample((notes, one, today) =>
            HoursOn(today, [.. notes, one]) >= HoursOn(today, notes) - 3.5 - 1e-9);

    [Fact]
    public void Noting_at_least_the_habit_never_moves_the_day_later() =>
        Gen.Select(Notes.Array[0, 5], Gen.Int[0, 150], Gen.Double[3.5, 12], Gen.Int[0, 200]).Sample((notes, day, hours, today) =>
            DueOn(today, [.. notes, new LoggedHours(Monday.AddDays(day), hours)]) <= DueOn(today, notes));

    [Fact]
    public void The_day_is_the_last_one_within_the_hours() =>
        Gen.Select(Notes.Array[0, 6], Gaps.Array[0, 3], Gen.Int[0, 120]).Sample((notes, pauses, today) =>
        {
            var played = HoursPlayed.Of(Racket with { Logged = notes, Pauses = pauses }, Monday, Monday.AddDays(today));
            if (played.By(Monday.AddDays(today)) > 18)
                return true;
            var last = played.LastDayWithin(18)!.Value;
            var next = Enumerable.Range(1, 100).Select(i => last.AddDays(i)).First(day => played.By(day) > played.By(last) + 1e-9);
            return (played.By(last) <= 18 + 1e-6 || last == Monday) && played.By(next) > 18 - 1e-6;
        }, iter: 2000);

    private static readonly Gen<LoggedHours> Notes =
        Gen.Select(Gen.Int[-10, 150], Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 12])).Select((day, hours) => new LoggedHours(Monday.AddDays(day), hours));

    private static readonly Gen<Pause> Gaps =
        Gen.Select(Gen.Int[-10, 60], Gen.Int[0, 20]).Select((from, days) => new Pause(Monday.AddDays(from), Monday.AddDays(from + days)));

    private static DateOnly Day(int day) => Monday.AddDays(day - 2);

    private static LoggedHours Noted(int day, double hours) => new(Day(day), hours);

    private static double Hours(params LoggedHours[] notes) => Hours(Racket with { Logged = notes });

    private static double Hours(ForecastInput racket) => HoursPlayed.Of(racket, Monday, Friday).By(Friday);

    private static double HoursOn(int today, LoggedHours[] notes) =>
        HoursPlayed.Of(Racket with { Logged = notes }, Monday, Monday.AddDays(today)).By(Monday.AddDays(today));

    private static DateOnly? DueOn(int today, LoggedHours[] notes) => (Racket with { Logged = notes }).On(Monday.AddDays(today)).Due;
}
