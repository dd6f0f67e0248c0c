using TagPage.Core.Customising;
using TagPage.Core.Units;

namespace TagPage.Records.Customising;

/// <summary>A place on a frame as entered.</summary>
public sealed record FramePlaceEntry
{
    public string Name { get; init; } = "";

    /// <summary>From the butt.</summary>
    public decimal At { get; init; }

    /// <summary>Of each side from the frame's long axis.</summary>
    public decimal OffAxis { get; init; }

    /// <summary>Of both distances.</summary>
    public LengthUnit LengthUnit { get; init; } = LengthUnit.Cm;
    public bool Paired { get; init; }
    public decimal Most { get; init; }
    public WeightUnit WeightUnit { get; init; }
    public bool OnStrings { get; init; }

    public FramePlace Place => new(Name, Cm(At))
    {
        OffAxisCm = Cm(OffAxis),
        Paired = Paired,
        MostG = (double)new Weight(Most, WeightUnit).Grams,
        OnStrings = OnStrings,
    };

    private double Cm(decimal distance) => (double)new Distance(distance, LengthUnit).Mm / 10;

    /// <summary>In grams and centimetres.</summary>
    public static FramePlaceEntry Of(FramePlace place) => new()
    {
        Name = place.Name,
        At = (decimal)place.AtCm,
        OffAxis = (decimal)place.OffAxisCm,
        Paired = place.Paired,
        Most = (decimal)place.MostG,
        OnStrings = place.OnStrings,
    };
}
