using TagPage.Core.Customising;

namespace TagPage.Records.Tags;

/// <summary>What a racket measures, where its owner lets strangers see it.</summary>
public sealed record TagSpecRow
{
    public decimal? WeightG { get; init; }
    public decimal? BalanceMm { get; init; }
    public decimal? LengthMm { get; init; }
    public decimal? SwingWeight { get; init; }

    /// <summary>The balance in points, where the length is known; what instruments leave open is for the household.</summary>
    public Uncertain? Points => BalanceMm is { } balance && LengthMm is { } length ? new(BalancePoint.Points((double)balance / 10, (double)length / 10), 0) : null;
}
