namespace TagPage.Records.Specs;

/// <summary>One measurement of a racket as entered.</summary>
public sealed record SpecEntry
{
    public string FormKey { get; init; } = "";
    public int Version { get; init; }
    public DateOnly MeasuredOn { get; init; }
    public decimal? WeightG { get; init; }
    public decimal? BalanceMm { get; init; }
    public decimal? SwingWeight { get; init; }
    public decimal? Stiffness { get; init; }
    public string? StiffnessScale { get; init; }
    public decimal? LengthMm { get; init; }
    public bool Strung { get; init; }
    public bool GripOn { get; init; }
    public bool DampenerOn { get; init; }
    public string? Note { get; init; }
}
