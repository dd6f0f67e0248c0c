namespace TagPage.Records.Jobs;

/// <summary>What is noted when a racket is handed out.</summary>
public sealed record HandOutEntry
{
    public DateOnly CollectedOn { get; init; }
    public bool Paid { get; init; }
}
