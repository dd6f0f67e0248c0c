namespace TagPage.Records.Readings;

/// <summary>A later reading as entered.</summary>
public sealed record ReadingEntry
{
    public string FormKey { get; init; } = "";
    public DateOnly TakenOn { get; init; }
    public string? TakenAt { get; init; }
    public decimal Value { get; init; }
    public long? InstrumentId { get; init; }
    public string? Note { get; init; }
}
