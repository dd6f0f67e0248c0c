namespace TagPage.Labels.Geometry;

/// <summary>
/// How small and how large a module may be, in mm. From memory, and the shop's to change: phone cameras differ, and
/// nobody publishes a lower limit. For comparison, retail checkout asks for 0.396 mm or more (GS1).
/// </summary>
/// <param name="SmallestMm">Under this no square is printed.</param>
/// <param name="FineMm">Under this it scans close up.</param>
/// <param name="LargestMm">Over this it grows no further, unless one dot is larger.</param>
public sealed record ModuleLimits(double SmallestMm, double FineMm, double LargestMm)
{
    /// <summary>0.25, 0.33 and 0.6 mm.</summary>
    public static ModuleLimits Usual { get; } = new(0.25, 0.33, 0.6);
}
