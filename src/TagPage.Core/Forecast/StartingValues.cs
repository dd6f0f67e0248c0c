using TagPage.Core.Forecast.Learning;
using TagPage.Core.Sports;

namespace TagPage.Core.Forecast;

/// <summary>
/// Every number of the forecast that the shop can change, in one place. The values here are from memory:
/// model assumptions of this project, not published. Ranges are in <see cref="StartingRanges"/>.
/// A plain record, so that it can be kept as JSON; what is missing there takes the value given here.
/// </summary>
public sealed record StartingValues
{
    /// <summary>What a new shop starts with.</summary>
    public static StartingValues Default { get; } = new();

    public SportValues Tennis { get; init; } = new()
    {
        ReferenceGaugeMm = (double)SportFacts.Of(Sport.Tennis).ReferenceGaugeMm,
        ManyMainsFactor = 1.15,
    };

    public SportValues Badminton { get; init; } = new()
    {
        ReferenceGaugeMm = (double)SportFacts.Of(Sport.Badminton).ReferenceGaugeMm,
    };

    public SportValues Squash { get; init; } = new()
    {
        ReferenceGaugeMm = (double)SportFacts.Of(Sport.Squash).ReferenceGaugeMm,
    };

    public TensionValues Tension { get; init; } = new();

    public WearValues Wear { get; init; } = new();

    public HittingValues Hitting { get; init; } = new();

    public DueSoonValues DueSoon { get; init; } = new();

    /// <summary>How much a spare is played, against 1 for a racket played regularly.</summary>
    public double SpareWeight { get; init; } = 0.1;

    /// <summary>Strings get no older, however little they are played; in days.</summary>
    public int LargestAgeDays { get; init; } = 365;

    /// <summary>The values of one sport.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value names no sport.</exception>
    public SportValues Of(Sport sport) => sport switch
    {
        Sport.Tennis => Tennis,
        Sport.Badminton => Badminton,
        Sport.Squash => Squash,
        _ => throw new ArgumentOutOfRangeException(nameof(sport), sport, "Not a sport the shop strings for."),
    };
}
