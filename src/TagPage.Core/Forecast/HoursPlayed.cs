using TagPage.Core.Players;

namespace TagPage.Core.Forecast;

/// <summary>
/// Hours played on a set of strings by a given day, H(t). The one place that knows how hours add up over time;
/// every limit asks here. A week from Monday to Sunday that holds notes for the racket counts its notes, every other one
/// hours a week × unpaused days / 7, the day of stringing included and the day itself not. The current week, if it holds
/// notes, counts them up to today, and the habit from tomorrow on. Days before another racket left play count with the share of then.
/// </summary>
public sealed class HoursPlayed
{
    private readonly IReadOnlyList<Pause> _pauses;
    private readonly NotedWeeks _noted;

    // From here on there is habit alone, counted in days from the first one not told by notes.
    private readonly DateOnly _habitFrom;
    private readonly DateOnly _firstDay;
    private readonly double _byHabit;

    private readonly DateOnly _today;

    // Until a day it was another share of the play that fell on the racket.
    private HoursPlayed? _before;
    private DateOnly _since;

    private HoursPlayed(ForecastInput input, DateOnly strung, DateOnly today)
    {
        _today = today = today > strung ? today : strung;
        (Strung, _pauses) = (strung, input.Pauses);
        HoursAWeek = PlayedTimes.AWeek(input.Play, input.Share) * (double)Math.Clamp(input.Play.HoursATime, 0, 24);
        _noted = new NotedWeeks(input.Logged, strung, today);
        var inNotedWeek = _noted.Any && _noted.End > today;
        _habitFrom = inNotedWeek ? today : _noted.Any ? _noted.End : strung;
        _firstDay = inNotedWeek ? Days.After(today, 1) : _habitFrom;
        _byHabit = ByNotes(_habitFrom);
    }

    /// <summary>The day the strings went in.</summary>
    public DateOnly Strung { get; }

    /// <summary>Hours by today, where some of them were noted; null where they are the habit alone.</summary>
    public double? SoFar => _noted.Any ? By(_today) : null;

    /// <summary>This racket's hours of play a week, 0 or more.</summary>
    public double HoursAWeek { get; }

    /// <summary>Whether a pause lies between the strings' going in and today or is still ahead.</summary>
    public bool HasPauses => _pauses.Any(pause => pause.To is not { } to || to >= Strung);

    /// <summary>From the player's habits, the racket's share of play, pauses and what was noted.</summary>
    public static HoursPlayed Of(ForecastInput input, DateOnly strung, DateOnly today)
    {
        HoursPlayed? before = null;
        var since = strung;
        foreach (var earlier in input.EarlierShares.Where(earlier => earlier.Until > strung))
            (before, since) = (new HoursPlayed(input with { Share = earlier.Share }, strung, today) { _before = before, _since = since }, earlier.Until);
        return new HoursPlayed(input, strung, today) { _before = before, _since = since };
    }

    /// <summary>Hours played by a day; 0 before the strings went in.</summary>
    public double By(DateOnly day) => _before is null ? AtShare(day)
        : day <= _since ? _before.By(day)
        : _before.By(_since) + AtShare(day) - AtShare(_since);

    // As if it had always been this share.
    private double AtShare(DateOnly day) => day < _habitFrom
        ? ByNotes(day)
        : _byHabit + (HoursAWeek * Unpaused(_firstDay, day.DayNumber - _habitFrom.DayNumber) / 7);

    /// <summary>
    /// The day on which so many hours are used up, counted in whole days of play: without pause and notes
    /// strung + ⌊7 · hours / hours a week⌋, with notes today + ⌊7 · what is left / hours a week⌋ unpaused days. Where nothing
    /// is left it lies before today, but not before the week in which the hours were used up, nor before the strings went in.
    /// Null without any play, and where a pause without an end comes before it.
    /// </summary>
    public DateOnly? LastDayWithin(double hours)
    {
        if (HoursAWeek <= 0)
            return null;
        if (_before is null)
            return AtShare(hours);
        if (_before.By(_since) > hours + Slack)
            return _before.LastDayWithin(hours);
        return AtShare(hours - _before.By(_since) + AtShare(_since)) is { } day ? (day > _since ? day : _since) : null;
    }

    private DateOnly? AtShare(double hours) => _byHabit <= hours + Slack ? PlayedOff(hours - _byHabit) : UsedUp(hours);

    private const double Slack = 1e-9;

    private double ByNotes(DateOnly day) => day < Strung ? 0 : _noted.HoursBy(day) + ByHabit(day);

    private double ByHabit(DateOnly day) =>
        HoursAWeek * (Unpaused(Strung, day.DayNumber - Strung.DayNumber) - _noted.In(Strung, day).Sum(part => Unpaused(part.First, part.Days))) / 7;

    private int Unpaused(DateOnly first, int days) => days - Pause.DaysIn(_pauses, first, days);

    // So many days of play before the last of what was noted, as far back as its week: where within it, nobody knows.
    private DateOnly UsedUp(double hours)
    {
        var (needed, days) = ((int)Math.Ceiling((7 * (_byHabit - hours) / HoursAWeek) - Slack), 0);
        var most = _habitFrom.DayNumber - WeekUsedUp(hours).DayNumber;
        while (days < most && needed - Unpaused(Back(days), days) is > 0 and var missing)
            days = Math.Min(days + missing, most);
        return Back(days);

        DateOnly Back(int count) => _habitFrom.AddDays(-count);
    }

    private DateOnly WeekUsedUp(double hours)
    {
        var monday = NotedWeeks.Monday(_habitFrom);
        while (monday > Strung && _noted.HoursBy(monday.AddDays(-1)) + ByHabit(monday) > hours + Slack)
            monday = monday.AddDays(-7);
        return monday > Strung ? monday : Strung;
    }

    private DateOnly? PlayedOff(double hours)
    {
        var most = Math.Max(0, LimitDay.MostDays - (_habitFrom.DayNumber - Strung.DayNumber));
        var played = Math.Min(Days.Whole(7 * hours / HoursAWeek), most);
        var days = played;
        while (days < most && played - Unpaused(_firstDay, days) is > 0 and var missing)
            days = Math.Min(days + missing, most);
        var isReached = Unpaused(_firstDay, days) >= played;
        return !isReached && _pauses.Any(pause => pause.To is null) ? null : Days.After(_habitFrom, days);
    }
}
