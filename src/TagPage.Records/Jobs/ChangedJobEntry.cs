using TagPage.Core.Jobs;

namespace TagPage.Records.Jobs;

/// <summary>A changed job as entered: the order, and all that has happened since.</summary>
public sealed record ChangedJobEntry : JobEntry
{
    public int Version { get; init; }
    public DateOnly? StrungOn { get; init; }
    public string? StrungBy { get; init; }
    public string? Machine { get; init; }
    public decimal? Reading { get; init; }
    public long? InstrumentId { get; init; }
    public DateOnly? CollectedOn { get; init; }
    public DateOnly? EndedOn { get; init; }
    public BedEnd? EndedHow { get; init; }

    internal JobDays Days => new()
    {
        ReceivedOn = ReceivedOn,
        PromisedFor = PromisedFor,
        StrungOn = StrungOn,
        CollectedOn = CollectedOn,
        EndedOn = EndedOn,
        EndedHow = EndedHow,
    };

    /// <summary>The state that the days give; without any a job waits, or stays where it was.</summary>
    public JobState StateFrom(JobState now) => (StrungOn, CollectedOn, now) switch
    {
        (not null, not null, _) => JobState.Collected,
        (not null, null, _) => JobState.Strung,
        (_, _, JobState.OnMachine or JobState.Cancelled) => now,
        _ => JobState.Waiting,
    };
}
