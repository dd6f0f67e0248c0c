namespace TagPage.Core.Players;

/// <summary>Days on which a player is not playing (injury, holiday): time passes, but no hours are played.</summary>
/// <param name="From">The first day without play.</param>
/// <param name="To">The last day without play; null while nobody knows.</param>
public sealed record Pause(DateOnly From, DateOnly? To)
{
    /// <summary>Whether it has begun by a day and nobody knows when it ends.</summary>
    public bool IsOpenOn(DateOnly day) => To is null && From <= day;

    /// <summary>How many of so many days, the first one given, lie in any of the pauses.</summary>
    public static int DaysIn(IReadOnlyList<Pause> pauses, DateOnly first, int days)
    {
        if (pauses.Count == 0)
            return 0;
        var (paused, next, end) = (0, first.DayNumber, first.DayNumber + days);
        foreach (var pause in pauses.OrderBy(p => p.From))
        {
            var from = Math.Max(next, pause.From.DayNumber);
            var until = Math.Min(end, pause.To is { } to ? to.DayNumber + 1 : int.MaxValue);
            if (until <= from)
                continue;
            paused += until - from;
            next = until;
        }
        return paused;
    }
}
