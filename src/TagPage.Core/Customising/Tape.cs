namespace TagPage.Core.Customising;

/// <summary>What the shop's tapes weigh, in g per cm. The start is from memory: weigh a length of your own roll.</summary>
public sealed record Tape
{
    public double LeadGramsPerCm { get; init; } = 0.2;
    public double TungstenGramsPerCm { get; init; } = 0.35;

    /// <summary>How many cm of tape weigh so much; null where the material is not a tape.</summary>
    public double? LengthCm(double grams, AddedMaterial material) => material switch
    {
        AddedMaterial.Lead => grams / LeadGramsPerCm,
        AddedMaterial.Tungsten => grams / TungstenGramsPerCm,
        _ => null,
    };

    /// <summary>What to start from: lead is toxic, and there is no safe level in a child's blood (US CDC).</summary>
    public static AddedMaterial Usual(bool junior) => junior ? AddedMaterial.Tungsten : AddedMaterial.Lead;
}
