using TagPage.Core.Players;

namespace TagPage.Core.Forecast;

/// <summary>How many times longer or shorter strings last, by how hard the player is on them.</summary>
public sealed record HittingValues
{
    public double Easy { get; init; } = 1.25;

    public double Average { get; init; } = 1;

    public double Hard { get; init; } = 0.75;

    /// <summary>The factor of one way of hitting.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value names no way of hitting.</exception>
    public double Of(Hitting hitting) => hitting switch
    {
        Hitting.Easy => Easy,
        Hitting.Average => Average,
        Hitting.Hard => Hard,
        _ => throw new ArgumentOutOfRangeException(nameof(hitting), hitting, "Not a way of hitting."),
    };
}
