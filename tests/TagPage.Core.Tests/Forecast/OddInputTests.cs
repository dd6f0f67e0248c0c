using CsCheck;
using TagPage.Core.Forecast;
using TagPage.Core.Players;
using TagPage.Core.Strings;

namespace TagPage.Core.Tests.Forecast;

public class OddInputTests
{
    [Fact]
    public void Strings_dated_tomorrow_by_a_moved_clock_are_as_good_as_new()
    {
        var forecast = Case.Racket.AfterDays(-1);
        Assert.Equal((RestringState.Good, 29, 1), (forecast.State, forecast.DaysLeft, forecast.LifeLeft));
    }

    [Fact]
    public void Next_to_no_play_is_capped_at_ten_years()
    {
        var forecast = (Case.Racket with
        {
            Rule = RestringRule.Hours,
            Play = new Play(0.0000000000000000000000000001m, 0.1m, Hitting.Easy),
        }).AfterDays(0);
        Assert.Equal(Case.Strung.AddDays(365), forecast.Due);
        Assert.Equal(LimitDay.MostDays, forecast.Limit<HoursLimit>().Interval);
    }

    [Fact]
    public void The_end_of_the_calendar_is_not_passed()
    {
        var forecast = (Case.Racket with { StrungOn = DateOnly.MaxValue, EveryWeeks = 104 }).On(DateOnly.MinValue);
        Assert.All(forecast.Limits, limit => Assert.Equal(DateOnly.MaxValue, limit.Day ?? DateOnly.MaxValue));
    }

    [Fact]
    public void No_number_however_odd_breaks_the_forecast() =>
        Gen.Select(Numbers, Numbers, Numbers, Shares, Dates, Dates, Gen.Int).Sample(
            (times, hours, gauge, share, strung, today, weeks) =>
            {
                var odd = Case.Racket with
                {
                    Play = new Play(times, hours, Hitting.Hard),
                    Bed = Case.Of(Material.Aramid, gauge),
                    Share = share,
                    StrungOn = strung,
                    EveryWeeks = weeks,
                    Mains = weeks,
                };
                return Enum.GetValues<RestringRule>().All(rule => IsSound((odd with { Rule = rule }).On(today), strung));
            });

    private static bool IsSound(RestringBy forecast, DateOnly strung) =>
        forecast.Due >= strung
        && forecast.Due.Value.DayNumber - strung.DayNumber <= 3650
        && forecast.LifeLeft is >= 0 and <= 1
        && forecast.Limits.All(limit => limit is not HoursLimit hours || (double.IsFinite(hours.HoursAWeek) && double.IsFinite(hours.LifeHours ?? 0)))
        && forecast.Limits.OfType<TimesAWeekLimit>().All(times => double.IsFinite(times.TimesAWeek));

    private static readonly Gen<decimal> Numbers = Gen.OneOf(
        Gen.Decimal, Gen.Decimal[0, 30], Gen.OneOf(0, decimal.MaxValue, decimal.MinValue, 0.0000000000000000000000000001m));

    private static readonly Gen<double> Shares = Gen.OneOf(
        Gen.Double[0, 1], Gen.OneOf(double.NaN, double.PositiveInfinity, double.NegativeInfinity, double.Epsilon));

    private static readonly Gen<DateOnly> Dates = Gen.OneOf(
        Gen.Int[0, DateOnly.MaxValue.DayNumber].Select(DateOnly.FromDayNumber),
        Gen.OneOf(DateOnly.MinValue, DateOnly.MaxValue));
}
