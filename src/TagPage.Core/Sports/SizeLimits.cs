namespace TagPage.Core.Sports;

/// <summary>
/// The largest frame the rules of a sport allow. Warn, never forbid: rules change, and a shop also strings for fun.
/// </summary>
/// <param name="MaxLengthMm">Overall length in mm.</param>
/// <param name="MaxWidthMm">Overall width in mm.</param>
/// <param name="Source">The rules to look it up in; check the current edition.</param>
public sealed record SizeLimits(int MaxLengthMm, int MaxWidthMm, string Source)
{
    /// <summary>Grams, where the rules limit them.</summary>
    public int? MaxMassG { get; init; }
}
