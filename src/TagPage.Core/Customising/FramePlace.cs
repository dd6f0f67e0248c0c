namespace TagPage.Core.Customising;

/// <summary>A place on a frame that can carry mass.</summary>
/// <param name="Name">As the shop calls it.</param>
/// <param name="AtCm">Distance from the butt in cm.</param>
public sealed record FramePlace(string Name, double AtCm)
{
    /// <summary>Grams that a place carries unless the shop says otherwise.</summary>
    public const double StartingMostG = 20;

    /// <summary>From the butt; no frame is longer.</summary>
    public const int FarthestCm = 80;

    /// <summary>From the long axis.</summary>
    public const int FarthestOffAxisCm = 20;

    /// <summary>Grams at any place.</summary>
    public const int HeaviestG = 100;

    private const double HandleTopCm = 20;

    /// <summary>Distance of each side from the long axis in cm.</summary>
    public double OffAxisCm { get; init; }

    /// <summary>Two places that mirror each other and get the same mass, such as three and nine o'clock.</summary>
    public bool Paired { get; init; }

    /// <summary>Grams at most, both sides of a pair together.</summary>
    public double MostG { get; init; } = StartingMostG;

    /// <summary>On the strings, where no mass belongs.</summary>
    public bool OnStrings { get; init; }

    /// <summary>Whether it lies under the grip.</summary>
    public bool InHandle => AtCm <= HandleTopCm;

    public AddedMass Carrying(double grams) => new(grams, AtCm, OffAxisCm);
}
