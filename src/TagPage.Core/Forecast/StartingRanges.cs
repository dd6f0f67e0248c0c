namespace TagPage.Core.Forecast;

/// <summary>The ranges within which a shop can set its own values; both ends belong to them.</summary>
public static class StartingRanges
{
    /// <summary>Hours a string lasts.</summary>
    public const double MinLifeHours = 1, MaxLifeHours = 500;

    /// <summary>Reference diameter in mm.</summary>
    public const double MinGaugeMm = 0.5, MaxGaugeMm = 2;

    /// <summary>Factors for hitting and for dense patterns.</summary>
    public const double MinFactor = 0.25, MaxFactor = 4;

    /// <summary>Number of mains that counts as dense.</summary>
    public const int MinManyMains = 8, MaxManyMains = 40;

    /// <summary>Weight of a spare.</summary>
    public const double MinSpareWeight = 0, MaxSpareWeight = 1;

    /// <summary>Days before the date that count as near.</summary>
    public const int MinDueSoonDays = 0, MaxDueSoonDays = 60;

    /// <summary>Last one in so many of the interval that counts as near.</summary>
    public const int MinLastOneIn = 1, MaxLastOneIn = 10;
}
