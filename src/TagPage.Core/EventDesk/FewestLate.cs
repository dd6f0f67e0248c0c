namespace TagPage.Core.EventDesk;

/// <summary>Which rackets to give up on when not all can be on time, so that as few as possible are late.</summary>
public static class FewestLate
{
    /// <summary>
    /// For one machine, with everything there from the start and no breaks: in due order, and whenever the running time
    /// passes a due time, the longest so far is set aside. Nothing does with fewer (Moore, <i>An n job, one machine
    /// sequencing algorithm for minimizing the number of late jobs</i>, 1968; the pass is Hodgson's).
    /// </summary>
    /// <param name="jobs">Minutes and due time of each, counted from the start.</param>
    /// <returns>The places of those set aside in the list that was given.</returns>
    public static IReadOnlyList<int> OnOneMachine(IReadOnlyList<(int Minutes, int Due)> jobs)
    {
        var (running, aside) = (0, new List<int>());
        var kept = new PriorityQueue<int, int>();
        foreach (var job in Enumerable.Range(0, jobs.Count).OrderBy(job => jobs[job].Due))
        {
            running += jobs[job].Minutes;
            kept.Enqueue(job, -jobs[job].Minutes);
            if (running <= jobs[job].Due)
                continue;
            var longest = kept.Dequeue();
            running -= jobs[longest].Minutes;
            aside.Add(longest);
        }
        return aside;
    }

    /// <summary>
    /// A heuristic for several machines: the same pass over the times at which list scheduling has the rackets ready.
    /// It need not be the fewest. What is on a machine, on court or pulled forward is never set aside.
    /// </summary>
    /// <returns>Desk numbers of those to string last.</returns>
    public static IReadOnlyList<int> Heuristic(Desk desk)
    {
        var (kept, aside) = (new List<DeskEntry>(), new List<int>());
        foreach (var entry in DeskOrder.Suggested(desk.Entries).Where(entry => entry.Due is not null || entry.On is not null))
        {
            kept.Add(entry);
            var plan = new DeskPlan(desk.Now, desk.Technicians, kept);
            if (entry.Due is null || plan.ReadyAt(entry.Number) <= entry.Due)
                continue;
            if (Longest(kept, plan) is not { } longest)
                continue;
            // Gone from another machine, the longest need not make room for this one.
            var given = MayWait(entry) && !IsOnTime(desk, kept.Where(other => other != longest), entry) ? entry : longest;
            kept.Remove(given);
            aside.Add(given.Number);
        }
        return aside;
    }

    private static bool IsOnTime(Desk desk, IEnumerable<DeskEntry> kept, DeskEntry entry) =>
        new DeskPlan(desk.Now, desk.Technicians, [.. kept]).ReadyAt(entry.Number) <= entry.Due;

    private static bool MayWait(DeskEntry entry) => entry is { On: null, OnCourt: false, PulledForward: false };

    // One that found no place at all takes longer than any.
    private static DeskEntry? Longest(List<DeskEntry> kept, DeskPlan plan) =>
        kept.Where(MayWait)
            .MaxBy(entry => plan.Of(entry.Number) is { } placed ? placed.Ready - placed.Start : TimeSpan.MaxValue);
}
