namespace TagPage.Core.EventDesk;

/// <summary>In which order to string.</summary>
public static class DeskOrder
{
    /// <summary>
    /// On court first, then what was pulled forward, then the earliest due time, equal times and those without one by desk
    /// number. On one machine, with everything there, the earliest due first makes the largest lateness as small as it
    /// can be (Jackson, <i>Scheduling a production line to minimize maximum tardiness</i>, 1955).
    /// </summary>
    public static IReadOnlyList<DeskEntry> Suggested(IEnumerable<DeskEntry> entries) =>
    [
        .. entries
            .OrderBy(entry => entry.OnCourt ? 0 : entry.PulledForward ? 1 : 2)
            .ThenBy(entry => entry.Aim ?? entry.Due ?? DateTime.MaxValue)
            .ThenBy(entry => entry.Number),
    ];
}
