using TagPage.Core.Jobs;

namespace TagPage.Records.Jobs;

/// <summary>What is noted when a racket comes off the machine.</summary>
public sealed record StrungEntry
{
    public DateOnly StrungOn { get; init; }
    public string? StrungBy { get; init; }
    public string? Machine { get; init; }
    public decimal? Reading { get; init; }
    public long? InstrumentId { get; init; }

    /// <summary>How the previous strings ended, if nobody has noted it yet.</summary>
    public BedEnd OldEndedHow { get; init; } = BedEnd.CutOut;

    internal JobDays Days(JobRow job) => new() { ReceivedOn = job.ReceivedOn, StrungOn = StrungOn };
}
