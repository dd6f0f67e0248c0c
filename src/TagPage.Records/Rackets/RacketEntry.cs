using TagPage.Core.Rackets;
using TagPage.Core.Sports;

namespace TagPage.Records.Rackets;

/// <summary>A racket as entered.</summary>
public sealed record RacketEntry
{
    /// <summary>The highest number a racket can have, and how many of the same are added at most.</summary>
    public const int LastNumber = 999, MostSame = 12;

    public string FormKey { get; init; } = "";
    public int Version { get; init; }
    public int Number { get; init; }

    /// <summary>How many of the same are added, with the numbers from this one on.</summary>
    public int Same { get; init; } = 1;
    public RacketState State { get; init; }
    public Sport Sport { get; init; }
    public string? Frame { get; init; }
    public string? TapeColour { get; init; }
    public decimal? HeadSize { get; init; }
    public string? HeadSizeUnit { get; init; } = "in2";
    public int? PatternMains { get; init; }
    public int? PatternCrosses { get; init; }
    public decimal? LengthCm { get; init; }
    public string? Grip { get; init; }
    public DateOnly? OwnDate { get; init; }
    public string? OwnDateNote { get; init; }
    public string? Note { get; init; }
}
