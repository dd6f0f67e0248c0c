using TagPage.Core.Jobs;

namespace TagPage.Records.Jobs;

/// <summary>A new job as entered.</summary>
public sealed record NewJobEntry : JobEntry
{
    public string FormKey { get; init; } = "";

    /// <summary>How the strings in the racket ended; null while they are still in.</summary>
    public BedEnd? OldEndedHow { get; init; }

    /// <summary>Null for the day the racket came in.</summary>
    public DateOnly? OldEndedOn { get; init; }

    /// <summary>Read on the strings it came with, before they are cut out; null where nothing was read.</summary>
    public decimal? OldReading { get; init; }
    public long? OldInstrumentId { get; init; }

    /// <summary>The day of that reading.</summary>
    public DateOnly OldReadOn => OldEndedOn ?? ReceivedOn;
}
