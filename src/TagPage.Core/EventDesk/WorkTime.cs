namespace TagPage.Core.EventDesk;

/// <summary>A stretch of time in which somebody strings, in local time of the event.</summary>
/// <param name="From">Its first minute.</param>
/// <param name="To">Its end; not before <paramref name="From"/>.</param>
public sealed record WorkTime(DateTime From, DateTime To)
{
    /// <summary>What is left of hours of work without the breaks, in order; breaks may overlap and may lie outside.</summary>
    public static IReadOnlyList<WorkTime> Between(IEnumerable<WorkTime> hours, IEnumerable<WorkTime> breaks) =>
        breaks.Aggregate(hours.OrderBy(time => time.From).ToList(), Without);

    private static List<WorkTime> Without(List<WorkTime> hours, WorkTime pause) =>
    [
        .. hours.SelectMany(time => pause.To <= time.From || pause.From >= time.To
            ? [time]
            : (WorkTime[])[time with { To = Later(time.From, pause.From) }, time with { From = Earlier(time.To, pause.To) }])
            .Where(time => time.From < time.To),
    ];

    private static DateTime Later(DateTime one, DateTime other) => one > other ? one : other;

    private static DateTime Earlier(DateTime one, DateTime other) => one < other ? one : other;
}
