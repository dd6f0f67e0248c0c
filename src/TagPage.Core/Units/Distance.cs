namespace TagPage.Core.Units;

/// <summary>Unit a length or a balance was entered in.</summary>
public enum LengthUnit { Mm, Cm, In }

/// <summary>A length as it was entered; converted only to be shown or compared.</summary>
public readonly record struct Distance(decimal Value, LengthUnit Unit)
{
    public decimal Mm => Value * MmIn(Unit);

    /// <summary>The value in the unit asked for, unrounded.</summary>
    public decimal In(LengthUnit unit) => unit == Unit ? Value : Mm / MmIn(unit);

    private static decimal MmIn(LengthUnit unit) => unit switch
    {
        LengthUnit.Cm => 10,
        LengthUnit.In => Factors.MmPerInch,
        _ => 1,
    };
}
