namespace TagPage.Labels.Geometry;

/// <summary>
/// How small and how large a module may be, in mm. From memory, and the shop's to change: phone cameras differ, and
/// nobody publishes a lower limit. For comparison, retail checkout asks for 0.396 mm or more (GS1).
/// </summary>
/// <param name="SmallestMm">Under this no square is printed.</param>
/// <param name="FineMm">Under this it scans close up.</param>
/// <param name="LargestMm">Over this it grows no further on tape of up to 24 mm, unless one dot is larger; on wider tape it grows with it.</param>
public sealed record ModuleLimits(double SmallestMm, double FineMm, double LargestMm)
{
    internal const double WideMm = 24;

    /// <summary>The largest module of a tape: wide tape is scanned from farther away.</summary>
    public double LargestOn(double tapeMm) => LargestMm * GrowthOn(tapeMm);

    /// <summary>The same with a lower upper limit for one tape.</summary>
    internal ModuleLimits NoLargerThan(double mm, double tapeMm) => this with { LargestMm = Math.Min(LargestMm, mm / GrowthOn(tapeMm) + 1e-6) };

    private static double GrowthOn(double tapeMm) => Math.Max(1, tapeMm / WideMm);

    /// <summary>0.25, 0.33 and 0.6 mm.</summary>
    public static ModuleLimits Usual { get; } = new(0.25, 0.33, 0.6);
}
