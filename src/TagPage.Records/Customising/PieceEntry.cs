using TagPage.Core.Customising;
using TagPage.Core.Units;

namespace TagPage.Records.Customising;

/// <summary>A mass on a frame as entered, both sides of a pair together; grams and centimetres are worked out where they are needed.</summary>
public record PieceEntry
{
    public string FormKey { get; init; } = "";
    public string Place { get; init; } = "";

    /// <summary>From the butt.</summary>
    public decimal At { get; init; }

    /// <summary>Of each side from the frame's long axis.</summary>
    public decimal OffAxis { get; init; }

    /// <summary>Of both distances.</summary>
    public LengthUnit LengthUnit { get; init; } = LengthUnit.Cm;
    public bool OnStrings { get; init; }
    public decimal Weight { get; init; }
    public WeightUnit WeightUnit { get; init; }
    public AddedMaterial Material { get; init; }
    public DateOnly AddedOn { get; init; }

    public double Grams => (double)new Weight(Weight, WeightUnit).Grams;

    public double AtCm => (double)new Distance(At, LengthUnit).Mm / 10;

    public AddedMass Mass => new(Grams, AtCm, (double)new Distance(OffAxis, LengthUnit).Mm / 10);
}
