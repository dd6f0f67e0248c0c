namespace TagPage.Core.Units;

/// <summary>Unit a weight was entered in.</summary>
public enum WeightUnit { G, Oz }

/// <summary>A weight as it was entered; converted only to be shown or compared.</summary>
public readonly record struct Weight(decimal Value, WeightUnit Unit)
{
    public decimal Grams => Unit == WeightUnit.Oz ? Value * Factors.GramsPerOunce : Value;

    /// <summary>The value in the unit asked for, unrounded.</summary>
    public decimal In(WeightUnit unit) => unit == Unit ? Value : unit == WeightUnit.Oz ? Grams / Factors.GramsPerOunce : Grams;
}
