using TagPage.Records.Money;

namespace TagPage.Records.Jobs;

/// <summary>What is noted when a racket is handed out.</summary>
public sealed record HandOutEntry
{
    public DateOnly CollectedOn { get; init; }

    /// <summary>What is paid with it; null for nothing yet, and ignored where it was paid before.</summary>
    public PaymentEntry? Payment { get; init; }
}
