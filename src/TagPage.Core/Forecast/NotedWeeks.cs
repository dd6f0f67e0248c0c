using TagPage.Core.Players;

namespace TagPage.Core.Forecast;

/// <summary>The weeks, Monday to Sunday, in which something was noted for a racket between two days, both included.</summary>
internal sealed class NotedWeeks
{
    private const int DaysAWeek = 7;

    private readonly List<LoggedHours> _notes;
    private readonly List<DateOnly> _mondays;

    public NotedWeeks(IEnumerable<LoggedHours> notes, DateOnly first, DateOnly last)
    {
        _notes = [.. notes.Where(note => note.Day >= first && note.Day <= last)];
        _mondays = [.. _notes.Select(note => Monday(note.Day)).Distinct()];
    }

    public bool Any => _notes.Count > 0;

    /// <summary>The Monday after the last of them.</summary>
    public DateOnly End => Days.After(_mondays.Max(), DaysAWeek);

    /// <summary>What was noted by the end of a day.</summary>
    public double HoursBy(DateOnly day) => _notes.Where(note => note.Day <= day).Sum(note => Math.Max(0, note.Hours));

    /// <summary>What lies in these weeks of the days from one on and before another.</summary>
    public IEnumerable<(DateOnly First, int Days)> In(DateOnly from, DateOnly before)
    {
        foreach (var monday in _mondays)
        {
            var first = monday > from ? monday : from;
            var days = Math.Min(monday.DayNumber + DaysAWeek, before.DayNumber) - first.DayNumber;
            if (days > 0)
                yield return (first, days);
        }
    }

    public static DateOnly Monday(DateOnly day)
    {
        var since = ((int)day.DayOfWeek + DaysAWeek - 1) % DaysAWeek;
        return DateOnly.FromDayNumber(Math.Max(0, day.DayNumber - since));
    }
}
