namespace TagPage.Core.Players;

/// <summary>Days on which a player is not playing (injury, holiday): time passes, but no hours are played.</summary>
/// <param name="From">The first day without play.</param>
/// <param name="To">The last day without play; null while nobody knows.</param>
public sealed record Pause(DateOnly From, DateOnly? To)
{
    /// <summary>How many of the days after <paramref name="start"/> up to <paramref name="end"/> lie in any of the pauses.</summary>
    public static int DaysIn(IReadOnlyList<Pause> pauses, DateOnly start, DateOnly end)
    {
        if (pauses.Count == 0)
            return 0;
        var (paused, counted) = (0, start.DayNumber);
        foreach (var pause in pauses.OrderBy(p => p.From))
        {
            var first = Math.Max(counted + 1, pause.From.DayNumber);
            var last = Math.Min(end.DayNumber, pause.To?.DayNumber ?? int.MaxValue);
            if (last < first)
                continue;
            paused += last - first + 1;
            counted = last;
        }
        return paused;
    }
}
