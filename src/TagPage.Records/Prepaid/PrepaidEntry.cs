using TagPage.Core.Money;

namespace TagPage.Records.Prepaid;

/// <summary>Restrings sold in advance, as entered.</summary>
public sealed record PrepaidEntry
{
    public string FormKey { get; init; } = "";
    public DateOnly BoughtOn { get; init; }
    public int Restrings { get; init; }
    public PrepaidCover Covers { get; init; }

    /// <summary>For all of them, in minor units.</summary>
    public long AmountMinor { get; init; }
    public PaymentMethod Method { get; init; }
    public string? Note { get; init; }
}
