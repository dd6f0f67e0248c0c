namespace TagPage.Core.Strings;

/// <summary>One string of a bed, as far as the forecast needs to know it.</summary>
/// <param name="Material">What it is made of.</param>
/// <param name="GaugeMm">Its diameter in mm, the fact behind the overlapping gauge numbers; null when not known.</param>
public sealed record BedString(Material Material, decimal? GaugeMm)
{
    /// <summary>Thinnest diameter in mm that a form accepts.</summary>
    public const decimal MinGaugeMm = 0.50m;

    /// <summary>Thickest diameter in mm that a form accepts.</summary>
    public const decimal MaxGaugeMm = 2.00m;
}
