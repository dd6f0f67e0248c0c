namespace TagPage.Core.EventDesk;

/// <summary>
/// Rackets are ordered by what was promised. One whose match was too early to be promised is ordered by its match all the same
/// as soon as that makes nobody late, or later, who was promised a time: the earliest needed first.
/// </summary>
internal static class NeededFirst
{
    // Each try is a whole plan; the earliest needed are the ones that matter.
    private const int MostTries = 8;

    public static DeskPlan Plan(DateTime now, IReadOnlyList<Technician> technicians, IReadOnlyList<DeskEntry> entries)
    {
        var plan = new DeskPlan(now, technicians, entries);
        foreach (var early in entries.Where(IsNeededEarlier).OrderBy(entry => entry.NeededBy).ThenBy(entry => entry.Number).Take(MostTries).ToList())
        {
            IReadOnlyList<DeskEntry> aimed = [.. entries.Where(entry => entry.Number != early.Number), early with { Aim = early.NeededBy }];
            var tried = new DeskPlan(now, technicians, aimed);
            if (tried.ReadyAt(early.Number) <= plan.ReadyAt(early.Number) && !entries.Any(entry => Suffers(entry, plan, tried)))
                (plan, entries) = (tried, aimed);
        }
        return plan;
    }

    private static bool IsNeededEarlier(DeskEntry entry) =>
        entry is { On: null, OnCourt: false, PulledForward: false } && entry.NeededBy < entry.Promised;

    private static bool Suffers(DeskEntry entry, DeskPlan before, DeskPlan after) =>
        entry.Due is { } due && new Slip(entry.Number, due, before.ReadyAt(entry.Number), after.ReadyAt(entry.Number)).Suffers;
}
