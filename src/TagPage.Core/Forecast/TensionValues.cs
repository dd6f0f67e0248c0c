using TagPage.Core.Forecast.Learning;
using TagPage.Core.Strings;

namespace TagPage.Core.Forecast;

/// <summary>The starting values of tension loss, one set for all sports.</summary>
public sealed record TensionValues
{
    public LossValues NaturalGut { get; init; } = new(20, 1.2, 0.25);

    public LossValues Multifilament { get; init; } = new(25, 2.2, 0.40);

    public LossValues SyntheticGut { get; init; } = new(25, 2.2, 0.45);

    public LossValues Polyester { get; init; } = new(25, 3.2, 0.70);

    public LossValues Aramid { get; init; } = new(20, 2.4, 0.50);

    public LossSpread Spread { get; init; } = new();

    /// <summary>The values of one material.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value names no material.</exception>
    public LossValues Of(Material material) => material switch
    {
        Material.NaturalGut => NaturalGut,
        Material.Multifilament => Multifilament,
        Material.SyntheticGut => SyntheticGut,
        Material.Polyester => Polyester,
        Material.Aramid => Aramid,
        _ => throw new ArgumentOutOfRangeException(nameof(material), material, "Not a string material."),
    };
}
