using TagPage.Core.EventDesk;
using TagPage.Core.Jobs;

namespace TagPage.Records.Events;

/// <summary>An event's desk at one moment.</summary>
/// <param name="Event">Which.</param>
/// <param name="Technicians">Who strings there.</param>
/// <param name="Entries">All its rackets, by desk number.</param>
/// <param name="Now">When this was read.</param>
public sealed record DeskBoard(EventRow Event, IReadOnlyList<TechnicianRow> Technicians, IReadOnlyList<EntryRow> Entries, DateTime Now)
{
    private readonly Dictionary<int, EntryRow> _byNumber = Entries.ToDictionary(entry => entry.Number);

    /// <summary>The plan as it stands, and what would become of it.</summary>
    public Desk Desk { get; } = new(Now, [.. Technicians.Select(technician => technician.ToTechnician())],
        [.. Entries.Where(entry => entry.IsOpen).Select(entry => entry.ToDesk(Now))]);

    public EntryRow? Of(int number) => _byNumber.GetValueOrDefault(number);

    public IEnumerable<EntryRow> In(JobState state) => Entries.Where(entry => entry.State == state);

    /// <summary>What waits, in the order in which it is to be strung; what the hours do not suffice for comes last.</summary>
    public IEnumerable<EntryRow> NextUp => DeskOrder.Suggested(Desk.Entries.Where(entry => entry.On is null))
        .OrderBy(entry => Desk.Plan.Of(entry.Number)?.Start ?? DateTime.MaxValue)
        .Select(entry => _byNumber[entry.Number]);

    /// <summary>When it should be ready; null if the hours do not suffice, or it is strung.</summary>
    public DateTime? ReadyAt(EntryRow entry) => entry.IsOpen ? Desk.Plan.ReadyAt(entry.Number) : null;

    /// <summary>On a machine that broke, or whose technician left: it is not ready before it is put back.</summary>
    public bool IsStuck(EntryRow entry) => entry.State == JobState.OnMachine && Technician(entry.TechnicianId) is { Away: true };

    public Pressure Pressure(EntryRow entry) => IsStuck(entry) ? Core.EventDesk.Pressure.Late
        : entry.IsOpen ? Pressures.Of(entry.ToDesk(Now), ReadyAt(entry)) : Core.EventDesk.Pressure.None;

    /// <summary>What is late or close to it.</summary>
    public IEnumerable<EntryRow> AtRisk => Entries.Where(entry => Pressure(entry) >= Core.EventDesk.Pressure.Tight)
        .OrderByDescending(Pressure).ThenBy(entry => entry.NeededBy ?? entry.Promised);

    /// <summary>What waits, was promised for after its match, and is planned in time for it after all; its owner does not know.</summary>
    public IEnumerable<EntryRow> InTimeAfterAll => In(JobState.Waiting).Where(entry => entry.NeededBy < entry.Promised && ReadyAt(entry) <= entry.NeededBy);

    /// <summary>
    /// What waits and would miss its match, though pulled forward it would be ready, and when, without hurting anybody: a break can
    /// make it so. The first few.
    /// </summary>
    public IReadOnlyList<(EntryRow Entry, DateTime Ready)> WorthPulling =>
    [
        .. In(JobState.Waiting).Where(entry => !entry.PulledForward && ReadyAt(entry) > entry.NeededBy).OrderBy(entry => entry.NeededBy).Take(5)
            .Where(entry => Desk.ReadyPulled(ToDesk(entry)) <= entry.NeededBy)
            .Select(entry => (Entry: entry, After: Desk.With(ToDesk(entry) with { PulledForward = true })))
            .Where(late => Desk.Slips(late.After).Count == 0 && !TakesAMatch(late.After))
            .Select(late => (late.Entry, late.After.Plan.ReadyAt(late.Entry.Number)!.Value)),
    ];

    private bool TakesAMatch(Desk after) => In(JobState.Waiting).Any(entry => ReadyAt(entry) <= entry.NeededBy && !(after.Plan.ReadyAt(entry.Number) <= entry.NeededBy));

    /// <summary>Rackets whose promise was moved; their owners are to be told.</summary>
    public IEnumerable<EntryRow> ToTell => Entries.Where(entry => entry.MovedFrom is not null && entry.State is not (JobState.Collected or JobState.Cancelled));

    /// <summary>What is strung and lies here, the longest first.</summary>
    public IEnumerable<EntryRow> Uncollected => In(JobState.Strung).OrderBy(entry => entry.StrungAt).ThenBy(entry => entry.Number);

    /// <summary>Handed out and not paid.</summary>
    public IEnumerable<EntryRow> Owed => In(JobState.Collected).Where(entry => entry.IsOwed);

    /// <summary>What else the player of a racket has to pay.</summary>
    public IReadOnlyList<EntryRow> OwedBeside(EntryRow entry) =>
        [.. Entries.Where(other => other.IsOwed && other.PlayerId == entry.PlayerId && other.Number != entry.Number)];

    public TechnicianRow? Technician(long? id) => Technicians.FirstOrDefault(technician => technician.Id == id);

    /// <summary>When they are back, if they are on a break now: one taken at the desk, or one between their hours of the day.</summary>
    public DateTime? OnBreakUntil(TechnicianRow technician) =>
        technician.Hours.Zip(technician.Hours.Skip(1), (one, next) => new WorkTime(one.To, next.From)).Where(gap => gap.From.Date == gap.To.Date)
            .Concat(technician.Breaks).FirstOrDefault(pause => pause.From <= Now && Now < pause.To)?.To;

    /// <summary>What a technician strings next: their own plan first, and else what is next for anybody.</summary>
    public EntryRow? NextFor(long technician) =>
        NextUp.FirstOrDefault(entry => Desk.Plan.Of(entry.Number)?.Technician == technician);

    /// <summary>For the plan.</summary>
    public DeskEntry ToDesk(EntryRow entry) => entry.ToDesk(Now);
}
