namespace TagPage.Core.Units;

/// <summary>
/// Exact conversion factors: the international yard and pound (agreement of 1959), the inch of 25.4 mm,
/// and standard gravity (SI brochure, 9th edition). Nothing here is rounded.
/// </summary>
public static class Factors
{
    /// <summary>Kilograms in a pound; equally kilograms-force in a pound-force.</summary>
    public const decimal KgPerLb = 0.45359237m;

    /// <summary>Millimetres in an inch.</summary>
    public const decimal MmPerInch = 25.4m;

    /// <summary>Grams in an avoirdupois ounce, a sixteenth of a pound.</summary>
    public const decimal GramsPerOunce = 28.349523125m;

    /// <summary>Newtons in a kilogram-force: standard gravity in m/s².</summary>
    public const decimal NewtonsPerKgf = 9.80665m;

    /// <summary>Newtons in a pound-force.</summary>
    public const decimal NewtonsPerLbf = KgPerLb * NewtonsPerKgf;

    /// <summary>Square centimetres in a square inch.</summary>
    public const decimal SquareCmPerSquareInch = MmPerInch * MmPerInch / 100;
}
