using TagPage.Core.Customising;
using TagPage.Core.Units;

namespace TagPage.Records.Specs;

/// <summary>One measurement of a racket as entered; grams and millimetres are worked out where they are needed.</summary>
public record SpecEntry
{
    public string FormKey { get; init; } = "";
    public int Version { get; init; }
    public DateOnly MeasuredOn { get; init; }
    public SpecKind Kind { get; init; }
    public decimal? Weight { get; init; }
    public WeightUnit WeightUnit { get; init; }
    public decimal? Length { get; init; }
    public LengthUnit LengthUnit { get; init; }
    public decimal? Balance { get; init; }
    public BalanceUnit BalanceUnit { get; init; }

    /// <summary>What the scale under the tip showed, in the weight's unit.</summary>
    public decimal? TipWeight { get; init; }
    public decimal? SwingWeight { get; init; }
    public SwingSource SwingSource { get; init; }

    /// <summary>Where it hung, from the butt, in the length's unit.</summary>
    public decimal? PendulumAxis { get; init; }
    public decimal? PendulumPeriodS { get; init; }

    /// <summary>Standard error of the period.</summary>
    public decimal? PendulumOffS { get; init; }

    /// <summary>What sums left open of a figure that was worked out; null for what the instrument does.</summary>
    public decimal? WeightOffG { get; init; }
    public decimal? BalanceOffMm { get; init; }
    public decimal? SwingWeightOff { get; init; }

    /// <summary>How the errors of figures that were worked out go together, from −1 to 1; null for not at all.</summary>
    public decimal? WeightBalanceR { get; init; }
    public decimal? WeightSwingR { get; init; }
    public decimal? BalanceSwingR { get; init; }
    public decimal? Stiffness { get; init; }
    public string? StiffnessScale { get; init; }
    public bool Strung { get; init; }
    public bool GripOn { get; init; }
    public bool DampenerOn { get; init; }
    public string? Note { get; init; }

    /// <summary>Of a spec that was worked out: where a figure comes from and what sums left open stay with those that were not typed anew.</summary>
    public SpecEntry After(SpecEntry before)
    {
        if (Kind != SpecKind.Customised)
            return this;
        var (weight, balance, swing) = (WeightG == before.WeightG, BalanceMm == before.BalanceMm, SwingWeight == before.SwingWeight);
        return this with
        {
            WeightOffG = weight ? before.WeightOffG : null,
            BalanceOffMm = balance ? before.BalanceOffMm : null,
            SwingWeightOff = swing ? before.SwingWeightOff : null,
            SwingSource = swing && SwingSource == SwingSource.Machine && before.SwingSource == SwingSource.WorkedOut ? SwingSource.WorkedOut : SwingSource,
            WeightBalanceR = weight && balance ? before.WeightBalanceR : null,
            WeightSwingR = weight && swing ? before.WeightSwingR : null,
            BalanceSwingR = balance && swing ? before.BalanceSwingR : null,
        };
    }

    /// <summary>The last that was measured of a figure; null where it never was.</summary>
    public static decimal? Newest(IEnumerable<SpecEntry> newestFirst, Func<SpecEntry, decimal?> figure) =>
        newestFirst.Select(figure).FirstOrDefault(measured => measured is not null);

    public Correlation Correlation => new((double)(WeightBalanceR ?? 0), (double)(WeightSwingR ?? 0), (double)(BalanceSwingR ?? 0));

    public decimal? WeightG => Weight is { } weight ? new Weight(weight, WeightUnit).Grams : null;

    public decimal? LengthMm => Length is { } length ? new Distance(length, LengthUnit).Mm : null;

    public decimal? PendulumAxisMm => PendulumAxis is { } axis ? new Distance(axis, LengthUnit).Mm : null;

    public decimal? BalanceMm => Balance is { } balance ? new Balance(balance, BalanceUnit).Mm(LengthMm) : null;
}
