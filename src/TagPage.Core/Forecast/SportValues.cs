using TagPage.Core.Strings;

namespace TagPage.Core.Forecast;

/// <summary>The starting values of one sport.</summary>
public sealed record SportValues
{
    /// <summary>Diameter in mm at which a string lasts its base hours.</summary>
    public required double ReferenceGaugeMm { get; init; }

    /// <summary>From this many mains a pattern counts as dense.</summary>
    public int ManyMains { get; init; } = 18;

    /// <summary>How many times longer strings last in a dense pattern; 1 for no difference.</summary>
    public double ManyMainsFactor { get; init; } = 1;

    public MaterialValues NaturalGut { get; init; } = new(60);

    public MaterialValues Multifilament { get; init; } = new(40);

    public MaterialValues SyntheticGut { get; init; } = new(35);

    public MaterialValues Polyester { get; init; } = new(18);

    public MaterialValues Aramid { get; init; } = new(22);

    /// <summary>The values of one material.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value names no material.</exception>
    public MaterialValues Of(Material material) => material switch
    {
        Material.NaturalGut => NaturalGut,
        Material.Multifilament => Multifilament,
        Material.SyntheticGut => SyntheticGut,
        Material.Polyester => Polyester,
        Material.Aramid => Aramid,
        _ => throw new ArgumentOutOfRangeException(nameof(material), material, "Not a string material."),
    };
}
