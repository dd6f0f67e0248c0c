namespace TagPage.Core.Sports;

/// <summary>What the product knows about a sport's rackets, whatever the shop's own settings say.</summary>
/// <param name="UsualMinLb">Lowest usual tension in lb. Common practice, no source.</param>
/// <param name="UsualMaxLb">Highest usual tension in lb. Common practice, no source.</param>
/// <param name="DrawnMains">Mains to draw when the racket's pattern is not known. Common practice, no source.</param>
/// <param name="ReferenceGaugeMm">String diameter in mm that the usual string lives refer to. Common practice, no source.</param>
/// <param name="Limits">The largest frame the sport's rules allow.</param>
public sealed record SportFacts(
    decimal UsualMinLb, decimal UsualMaxLb, int DrawnMains, decimal ReferenceGaugeMm, SizeLimits Limits)
{
    /// <summary>Shortest length in mm that a form accepts; toddlers' tennis rackets start near 430 mm (from memory).</summary>
    public const int MinLengthMm = 400;

    /// <summary>Longest length in mm that a form accepts, a little over every sport's limit.</summary>
    public const int MaxLengthMm = 800;

    private static readonly SportFacts Tennis = new(30, 65, 16, 1.30m,
        new SizeLimits(737, 317, "ITF Rules of Tennis, Appendix II"));

    private static readonly SportFacts Badminton = new(18, 36, 22, 0.68m,
        new SizeLimits(680, 230, "BWF Laws of Badminton, Law 4"));

    private static readonly SportFacts Squash = new(20, 30, 14, 1.20m,
        new SizeLimits(686, 215, "World Squash rules, racket appendix") { MaxMassG = 255 });

    /// <summary>The facts of one sport.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value names no sport.</exception>
    public static SportFacts Of(Sport sport) => sport switch
    {
        Sport.Tennis => Tennis,
        Sport.Badminton => Badminton,
        Sport.Squash => Squash,
        _ => throw new ArgumentOutOfRangeException(nameof(sport), sport, "Not a sport the shop strings for."),
    };
}
