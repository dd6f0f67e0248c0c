using TagPage.Core.Units;

namespace TagPage.Core.Customising;

/// <summary>Unit a balance was entered in; points are head light above zero.</summary>
public enum BalanceUnit { Mm, Cm, In, Points }

/// <summary>A balance as it was entered; converted only to be shown or compared.</summary>
public readonly record struct Balance(decimal Value, BalanceUnit Unit)
{
    /// <summary>Millimetres from the butt; null for points on a frame of unknown length.</summary>
    public decimal? Mm(decimal? lengthMm) => Unit switch
    {
        BalanceUnit.Points => (lengthMm / 2) - (Value * Factors.MmPerInch / 8),
        BalanceUnit.Cm => new Distance(Value, LengthUnit.Cm).Mm,
        BalanceUnit.In => new Distance(Value, LengthUnit.In).Mm,
        _ => Value,
    };

    /// <summary>In another unit; null for points on a frame of unknown length.</summary>
    public decimal? In(BalanceUnit unit, decimal? lengthMm) => unit == Unit ? Value : unit switch
    {
        BalanceUnit.Points => ((lengthMm / 2) - Mm(lengthMm)) * 8 / Factors.MmPerInch,
        BalanceUnit.Cm => Mm(lengthMm) / 10,
        BalanceUnit.In => Mm(lengthMm) / Factors.MmPerInch,
        _ => Mm(lengthMm),
    };
}
