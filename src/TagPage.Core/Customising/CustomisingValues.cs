using TagPage.Core.Customising.Planning;
using TagPage.Core.Units;

namespace TagPage.Core.Customising;

/// <summary>How a shop measures and what it adds.</summary>
public sealed record CustomisingValues
{
    public Tolerances Tolerances { get; init; } = new();

    public Tape Tape { get; init; } = new();

    /// <summary>Grams that masses are rounded to.</summary>
    public double StepG { get; init; } = Rounding.StartingStepG;

    /// <summary>m/s², for the pendulum.</summary>
    public double Gravity { get; init; } = Pendulum.StandardGravity;

    public WeightUnit WeightUnit { get; init; }

    public BalanceUnit BalanceUnit { get; init; }

    public LengthUnit LengthUnit { get; init; }
}
