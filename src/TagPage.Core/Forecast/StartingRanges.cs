namespace TagPage.Core.Forecast;

/// <summary>The ranges within which a shop can set its own values, both ends included.</summary>
public static class StartingRanges
{
    /// <summary>Hours a string lasts.</summary>
    public const double MinLifeHours = 1, MaxLifeHours = 500;

    /// <summary>Per cent of tension lost at which to restring.</summary>
    public const double MinThreshold = 1, MaxThreshold = 90;

    /// <summary>Per cent lost with each tenfold of time, and with each hour played.</summary>
    public const double MinLoss = 0.01, MaxLoss = 30;

    /// <summary>One part in so many is the standard deviation of a typical value.</summary>
    public const double MinTrust = 1, MaxTrust = 50;

    /// <summary>Percentage points by which a reading is off.</summary>
    public const double MinNoise = 0.1, MaxNoise = 20;

    /// <summary>Largest age of strings in days.</summary>
    public const int MinLargestAge = 30, MaxLargestAge = 3650;

    /// <summary>The Weibull shape of breakage.</summary>
    public const double MinShape = 1, MaxShape = 10;

    /// <summary>Standard deviations of the logarithms of mean life and shape.</summary>
    public const double MinWearSpread = 0.05, MaxWearSpread = 2;

    /// <summary>One bed in so many.</summary>
    public const double MinOneIn = 2, MaxOneIn = 100;

    /// <summary>Breaks that have to be known.</summary>
    public const int MinFewestBreaks = 1, MaxFewestBreaks = 20;

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
