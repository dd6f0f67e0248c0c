using TagPage.Core.Customising;
using TagPage.Core.Units;

namespace TagPage.Records.Import;

public sealed record SpecRow : ImportRow
{
    public RacketRow? Racket { get; init; }
    public long RacketId => Racket!.Id;
    public DateOnly MeasuredOn { get; init; }
    public SpecKind Kind { get; init; }
    public string KindName => Kind.ToString();
    public decimal? Weight { get; init; }
    public WeightUnit WeightUnit { get; init; }
    public string WeightUnitName => WeightUnit.ToString();
    public decimal? Length { get; init; }
    public LengthUnit LengthUnit { get; init; }
    public string LengthUnitName => LengthUnit.ToString();
    public decimal? Balance { get; init; }
    public BalanceUnit BalanceUnit { get; init; }
    public string BalanceUnitName => BalanceUnit.ToString();
    public decimal? TipWeight { get; init; }
    public decimal? SwingWeight { get; init; }
    public SwingSource SwingSource { get; init; }
    public string SwingSourceName => SwingSource.ToString();
    public decimal? PendulumAxis { get; init; }
    public decimal? PendulumPeriodS { get; init; }
    public decimal? PendulumOffS { get; init; }
    public decimal? WeightOffG { get; init; }
    public decimal? BalanceOffMm { get; init; }
    public decimal? SwingWeightOff { get; init; }
    public decimal? WeightBalanceR { get; init; }
    public decimal? WeightSwingR { get; init; }
    public decimal? BalanceSwingR { get; init; }
    public decimal? Stiffness { get; init; }
    public string StiffnessScale { get; init; } = "";
    public bool Strung { get; init; }
    public bool GripOn { get; init; }
    public bool DampenerOn { get; init; }
    public string Note { get; init; } = "";
}

/// <summary>A line of a frame's own list of places.</summary>
public sealed record PlaceRow : ImportRow
{
    public RacketRow? Racket { get; init; }
    public long RacketId => Racket!.Id;
    public string Name { get; init; } = "";
    public decimal At { get; init; }
    public decimal OffAxis { get; init; }
    public LengthUnit LengthUnit { get; init; }
    public string LengthUnitName => LengthUnit.ToString();
    public bool Paired { get; init; }
    public decimal Most { get; init; }
    public WeightUnit WeightUnit { get; init; }
    public string WeightUnitName => WeightUnit.ToString();
    public bool OnStrings { get; init; }
}

/// <summary>What is or was on a frame.</summary>
public sealed record PieceRow : ImportRow
{
    public RacketRow? Racket { get; init; }
    public long RacketId => Racket!.Id;
    public string Place { get; init; } = "";
    public decimal At { get; init; }
    public decimal OffAxis { get; init; }
    public LengthUnit LengthUnit { get; init; }
    public string LengthUnitName => LengthUnit.ToString();
    public bool OnStrings { get; init; }
    public decimal Weight { get; init; }
    public WeightUnit WeightUnit { get; init; }
    public string WeightUnitName => WeightUnit.ToString();
    public AddedMaterial Material { get; init; }
    public string MaterialName => Material.ToString();
    public DateOnly AddedOn { get; init; }
    public DateOnly? RemovedOn { get; init; }
    public bool ByPlan { get; init; }
    public int NotedAfter { get; init; }
    public bool OffByPlan { get; init; }
    public int OffNotedAfter { get; init; }
}
