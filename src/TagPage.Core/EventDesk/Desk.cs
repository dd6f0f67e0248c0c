namespace TagPage.Core.EventDesk;

/// <summary>The desk of an event at one moment, and what would become of it.</summary>
/// <param name="now">In whole minutes, local time of the event.</param>
/// <param name="technicians">Who strings, in the order in which rackets are given out.</param>
/// <param name="entries">What is not strung yet; desk numbers are distinct.</param>
public sealed class Desk(DateTime now, IReadOnlyList<Technician> technicians, IReadOnlyList<DeskEntry> entries)
{
    /// <summary>Promises are given in steps of so many minutes. Common practice, no source.</summary>
    public const int StepMinutes = 5;

    private static readonly TimeSpan Step = TimeSpan.FromMinutes(StepMinutes);

    public DateTime Now => now;

    public IReadOnlyList<Technician> Technicians => technicians;

    public IReadOnlyList<DeskEntry> Entries => entries;

    /// <summary>Who strings which racket when, as it stands: in the order of what was promised, and nearer to a match where that costs nobody a promise.</summary>
    public DeskPlan Plan => field ??= NeededFirst.Plan(now, technicians, entries);

    // The order of what was promised alone, on which promises are given: they hold whatever else is brought forward.
    private DeskPlan Promised => field ??= new DeskPlan(now, technicians, entries);

    /// <summary>The same desk with one racket more, or with one changed.</summary>
    public Desk With(DeskEntry entry) =>
        new(now, technicians, [.. entries.Where(other => other.Number != entry.Number), entry]);

    /// <summary>
    /// Whose promises would suffer if the desk became another one: late where they were kept, or later where they were late
    /// already. A racket without a due time cannot suffer.
    /// </summary>
    public IReadOnlyList<Slip> Slips(Desk after) => Slips(Plan, after.Plan);

    private List<Slip> Slips(DeskPlan before, DeskPlan after) =>
    [
        .. DeskOrder.Suggested(entries)
            .Where(entry => entry.Due is not null)
            .Select(entry => new Slip(entry.Number, entry.Due!.Value, before.ReadyAt(entry.Number), after.ReadyAt(entry.Number)))
            .Where(slip => slip.Suffers),
    ];

    /// <summary>Whom a racket makes late that comes in or is changed (pulled forward, on court now). It never names itself.</summary>
    public IReadOnlyList<Slip> Slips(DeskEntry entry) => [.. Slips(With(entry)).Where(slip => slip.Number != entry.Number)];

    /// <summary>When a racket that waits would be ready, were it pulled forward; null if the hours do not suffice for it.</summary>
    public DateTime? ReadyPulled(DeskEntry entry) => With(entry with { PulledForward = true }).Promised.ReadyAt(entry.Number);

    /// <summary>
    /// What to promise for a racket: the time it is needed by if that can be kept and makes no promise already given late,
    /// otherwise the earliest that can; null if it cannot be strung in the hours there are.
    /// </summary>
    public DateTime? PromiseFor(DeskEntry entry) =>
        entry.NeededBy is { } wish && wish > now && CanPromise(entry with { Promised = wish }, out _) ? wish : EarliestPromise(entry);

    /// <summary>
    /// The earliest promise for a racket, in steps of five minutes, that makes no promise already given late; null if it
    /// cannot be strung in the hours there are. One that goes before all others is promised for when it is ready.
    /// </summary>
    public DateTime? EarliestPromise(DeskEntry entry)
    {
        if (entry.OnCourt || entry.PulledForward)
            return With(entry).Plan.ReadyAt(entry.Number) is { } first ? Stepped(first) : null;
        // Between two due times of others a promise changes nothing but itself; at one the desk number decides.
        SortedSet<DateTime> steps =
        [
            Stepped(now),
            .. entries.Where(other => other.Number != entry.Number && other.Due > now)
                .SelectMany(other => (DateTime[])[Stepped(other.Due!.Value), Stepped(other.Due.Value.AddMinutes(1))]),
        ];
        while (steps.Count > 0)
        {
            var promise = steps.Min;
            steps.Remove(promise);
            if (CanPromise(entry with { Promised = promise }, out var ready))
                return promise;
            if (ready > promise)
                steps.Add(Stepped(ready.Value));
        }
        return null;
    }

    private bool CanPromise(DeskEntry promised, out DateTime? ready)
    {
        var after = With(promised).Promised;
        ready = after.ReadyAt(promised.Number);
        return ready <= promised.Promised && Slips(Promised, after).TrueForAll(slip => slip.Number == promised.Number);
    }

    /// <summary>The first moment from then on that can be promised.</summary>
    public static DateTime Stepped(DateTime time) => new((time.Ticks + Step.Ticks - 1) / Step.Ticks * Step.Ticks);
}
