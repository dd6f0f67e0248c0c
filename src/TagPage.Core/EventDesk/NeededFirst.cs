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
        foreach (var missing in entries.Where(entry => Misses(entry, plan)).OrderBy(entry => entry.NeededBy).ThenBy(entry => entry.Number).Take(MostTries).ToList())
        {
            IReadOnlyList<DeskEntry> aimed = [.. entries.Where(entry => entry.Number != missing.Number), missing with { Aim = missing.NeededBy }];
            var tried = new DeskPlan(now, technicians, aimed);
            if (tried.ReadyAt(missing.Number) <= plan.ReadyAt(missing.Number) && !entries.Any(entry => Suffers(entry, plan, tried)))
                (plan, entries) = (tried, aimed);
        }
        return plan;
    }

    private static bool Misses(DeskEntry entry, DeskPlan plan) =>
        entry is { On: null, OnCourt: false, PulledForward: false } && entry.NeededBy < entry.Promised && plan.ReadyAt(entry.Number) > entry.NeededBy;

    // Nor does anybody miss a match for it.
    private static bool Suffers(DeskEntry entry, DeskPlan before, DeskPlan after)
    {
        var (was, now) = (before.ReadyAt(entry.Number), after.ReadyAt(entry.Number));
        return (entry.Due is { } due && new Slip(entry.Number, due, was, now).Suffers) || (was <= entry.NeededBy && !(now <= entry.NeededBy));
    }
}
