using TagPage.Core.Players;

namespace TagPage.Core.Forecast;

/// <summary>
/// Hours played on a set of strings by a given day, H(t). The one place that knows how hours add up over time;
/// every limit asks here. Up to today they are the hours logged for the racket, if any were logged since the strings
/// went in, else hours a week × unpaused days / 7; after today hours a week × unpaused days / 7 come on top.
/// </summary>
public sealed class HoursPlayed
{
    private readonly IReadOnlyList<Pause> _pauses;
    private readonly IReadOnlyList<LoggedHours> _logged;
    private readonly DateOnly _today;
    private readonly double _byToday;

    private HoursPlayed(ForecastInput input, DateOnly strung, DateOnly today)
    {
        (Strung, _today, _pauses) = (strung, today > strung ? today : strung, input.Pauses);
        HoursAWeek = PlayedTimes.AWeek(input.Play, input.Share) * (double)Math.Clamp(input.Play.HoursATime, 0, 24);
        _logged = [.. input.Logged.Where(entry => entry.Day >= Strung && entry.Day <= _today)];
        _byToday = IsLogged ? _logged.Sum(entry => entry.Hours) : FromHabit(Strung, _today);
    }

    /// <summary>The day the strings went in.</summary>
    public DateOnly Strung { get; }

    /// <summary>Hours logged up to today; null if the player's habit counts instead.</summary>
    public double? Logged => IsLogged ? _byToday : null;

    /// <summary>This racket's hours of play a week, 0 or more.</summary>
    public double HoursAWeek { get; }

    /// <summary>Whether there is a pause between the day the strings went in and today, or one still to come.</summary>
    public bool HasPauses => _pauses.Any(pause => pause.To is not { } to || to > Strung);

    /// <summary>From the player's habits, the racket's share of play, pauses and logged hours.</summary>
    public static HoursPlayed Of(ForecastInput input, DateOnly strung, DateOnly today) => new(input, strung, today);

    /// <summary>Hours played by the end of a day; 0 before the strings went in.</summary>
    public double By(DateOnly day)
    {
        if (day > _today)
            return _byToday + FromHabit(_today, day);
        return IsLogged
            ? _logged.Where(entry => entry.Day <= day).Sum(entry => entry.Hours)
            : FromHabit(Strung, day);
    }

    /// <summary>
    /// The day on which so many hours are used up, counted in whole days of play: without pause and log
    /// strung + ⌊7 · hours / hours a week⌋, with a log today + ⌊7 · what is left / hours a week⌋ unpaused days.
    /// Null without any play.
    /// </summary>
    public DateOnly? LastDayWithin(double hours)
    {
        if (HoursAWeek <= 0)
            return null;
        if (!IsLogged)
            return PlayedOff(Strung, hours);
        return _byToday <= hours + Slack ? PlayedOff(_today, hours - _byToday) : LastLoggedWithin(hours);
    }

    private const double Slack = 1e-9;

    private bool IsLogged => _logged.Count > 0;

    private double FromHabit(DateOnly start, DateOnly end)
    {
        var days = end.DayNumber - start.DayNumber;
        return days <= 0 ? 0 : HoursAWeek * (days - Pause.DaysIn(_pauses, start, end)) / 7;
    }

    // The strings were used up before today: on the last day before the entry that went over.
    private DateOnly LastLoggedWithin(double hours)
    {
        var day = _logged.Select(entry => entry.Day).Where(day => By(day) > hours + Slack).Min().AddDays(-1);
        return day < Strung ? Strung : day;
    }

    private DateOnly PlayedOff(DateOnly start, double hours)
    {
        var unpaused = Days.Whole(7 * hours / HoursAWeek);
        var days = unpaused;
        while (days < LimitDay.MostDays && Missing(days) is > 0 and var missing)
            days = Math.Min(days + missing, LimitDay.MostDays);
        return Days.After(start, days);

        int Missing(int days) => unpaused - days + Pause.DaysIn(_pauses, start, Days.After(start, days));
    }
}
