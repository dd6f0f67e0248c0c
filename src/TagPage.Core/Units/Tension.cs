using System.Globalization;

namespace TagPage.Core.Units;

/// <summary>
/// A tension as it was entered. It keeps its own unit and is converted only to be shown or compared,
/// so that 24 lb stays 24 lb. A racket's "lb" and "kg" are pound-force and kilogram-force (common practice).
/// </summary>
public readonly record struct Tension(decimal Value, TensionUnit Unit)
{
    /// <summary>Step of a machine's scale in pounds (common practice).</summary>
    public const decimal StepLb = 0.5m;

    /// <summary>Step of a machine's scale in kilograms (common practice).</summary>
    public const decimal StepKg = 0.1m;

    /// <summary>The same tension in the other unit, rounded to a machine's step: "10.9 kg" for 24 lb.</summary>
    public Tension Other => Unit == TensionUnit.Lb
        ? new Tension(Round(In(TensionUnit.Kg), StepKg), TensionUnit.Kg)
        : new Tension(Round(In(TensionUnit.Lb), StepLb), TensionUnit.Lb);

    /// <summary>The value in the unit asked for, unrounded.</summary>
    public decimal In(TensionUnit unit) => (Unit, unit) switch
    {
        (TensionUnit.Lb, TensionUnit.Kg) => Value * Factors.KgPerLb,
        (TensionUnit.Kg, TensionUnit.Lb) => Value / Factors.KgPerLb,
        _ => Value,
    };

    /// <summary>Value and unit with at most two decimals and a point: "24 lb", "11.2 kg".</summary>
    public override string ToString() =>
        Value.ToString("0.##", CultureInfo.InvariantCulture) + (Unit == TensionUnit.Lb ? " lb" : " kg");

    private static decimal Round(decimal value, decimal step) =>
        Math.Round(value / step, MidpointRounding.AwayFromZero) * step;
}
