namespace TagPage.Records.Tags;

/// <summary>What a racket measures, where its owner lets strangers see it.</summary>
public sealed record TagSpecRow
{
    public decimal? WeightG { get; init; }
    public decimal? BalanceMm { get; init; }
    public decimal? SwingWeight { get; init; }
}
