using TagPage.Core.Customising;

namespace TagPage.Records.OwnPages;

/// <summary>A spec as the racket's own household sees it: without the shop's note.</summary>
public sealed record OwnPageSpec
{
    public DateOnly MeasuredOn { get; init; }
    public SpecKind Kind { get; init; }
    public decimal? WeightG { get; init; }
    public decimal? BalanceMm { get; init; }
    public decimal? SwingWeight { get; init; }
    public bool Strung { get; init; }
}
