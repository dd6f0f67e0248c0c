namespace TagPage.Core.EventDesk;

/// <summary>Who strings which racket when.</summary>
/// <param name="Number">Desk number.</param>
/// <param name="Technician">By whom.</param>
/// <param name="Start">When it goes on the machine.</param>
/// <param name="Ready">When it comes off.</param>
public sealed record Placement(int Number, long Technician, DateTime Start, DateTime Ready);

/// <summary>
/// List scheduling (Graham, <i>Bounds on multiprocessing timing anomalies</i>, 1969): in the suggested order each racket
/// goes where it is ready earliest. Nobody starts a racket that cannot be finished before a break. A racket may fill a gap
/// before an earlier one that waits for its time, so a later one never changes what was placed before it, and work that
/// goes as planned leaves the plan as it is.
/// </summary>
public sealed class DeskPlan
{
    private readonly Dictionary<int, Placement> _placed = [];

    /// <param name="now">Nothing is placed before.</param>
    /// <param name="technicians">Who strings.</param>
    /// <param name="entries">What is not strung yet, in any order.</param>
    public DeskPlan(DateTime now, IReadOnlyList<Technician> technicians, IEnumerable<DeskEntry> entries)
    {
        var free = technicians.Select(technician => new FreeTime(technician, now)).ToList();
        var open = DeskOrder.Suggested(entries);
        foreach (var entry in open.Where(entry => entry.On is not null))
            Keep(entry, now, free);
        foreach (var entry in open.Where(entry => entry.On is null))
            Place(entry, free);
    }

    /// <summary>All that found a place, by the time they start, then by number.</summary>
    public IReadOnlyList<Placement> Placements =>
        [.. _placed.Values.OrderBy(placed => placed.Start).ThenBy(placed => placed.Number)];

    /// <summary>Where a racket stands in the plan; null if the hours do not suffice for it.</summary>
    public Placement? Of(int number) => _placed.GetValueOrDefault(number);

    /// <summary>When a racket should be ready; null if the hours do not suffice for it.</summary>
    public DateTime? ReadyAt(int number) => Of(number)?.Ready;

    // What is on a machine stays there, through a break and past the time it should have taken.
    private void Keep(DeskEntry entry, DateTime now, List<FreeTime> free)
    {
        var theirs = free.Find(time => time.Technician.Id == entry.On!.Technician);
        var placed = new Placement(entry.Number, entry.On!.Technician, entry.On.Since, theirs?.Technician.Done(entry, now) ?? Done(entry, now));
        theirs?.Take(placed.Start, placed.Ready);
        _placed[entry.Number] = placed;
    }

    // Of a technician who is no longer there.
    private static DateTime Done(DeskEntry entry, DateTime now) =>
        entry.On!.Since + TimeSpan.FromMinutes(entry.Minutes ?? LearnedMinutes.Start) is var done && done > now ? done : now;

    private void Place(DeskEntry entry, List<FreeTime> free)
    {
        FreeTime? best = null;
        var start = DateTime.MaxValue;
        var ready = DateTime.MaxValue;
        foreach (var time in free)
        {
            if (entry.KeptFor is { } kept && kept != time.Technician.Id)
                continue;
            var takes = time.Technician.TimeFor(entry);
            if (time.First(takes, entry.NotBefore) is { } first && first + takes < ready)
                (best, start, ready) = (time, first, first + takes);
        }
        if (best is null)
            return;
        best.Take(start, ready);
        _placed[entry.Number] = new Placement(entry.Number, best.Technician.Id, start, ready);
    }
}
