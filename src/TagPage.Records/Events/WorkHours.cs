using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Events;

/// <summary>Reads when a technician strings, day by day.</summary>
internal static class WorkHours
{
    /// <summary>The times of each day of the event; or why they cannot be read.</summary>
    public static (IReadOnlyDictionary<DateOnly, IReadOnlyList<OpeningSpan>>? Hours, Refusal? Why) Read(EventRow desk, TechnicianEntry input)
    {
        if (OpeningTimes.Read(1, input.Hours) is not { Count: > 0 } usual)
            return (null, new WorkHoursUnread());
        var days = desk.Days.ToDictionary(day => day, _ => usual);
        foreach (var (at, typed) in input.Days.Index().Where(day => days.ContainsKey(day.Item.Day) && !string.IsNullOrWhiteSpace(day.Item.Hours)))
        {
            if (IsOff(typed.Hours!))
                days[typed.Day] = [];
            else if (OpeningTimes.Read(1, typed.Hours) is { Count: > 0 } hours)
                days[typed.Day] = hours;
            else
                return (null, new WorkHoursUnread($"{nameof(input.Days)}[{at}].{nameof(typed.Hours)}"));
        }
        return (days, null);
    }

    private static bool IsOff(string typed) => typed.Trim().Equals(DayHours.Off, StringComparison.OrdinalIgnoreCase);
}
