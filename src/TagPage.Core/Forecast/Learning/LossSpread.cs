namespace TagPage.Core.Forecast.Learning;

/// <summary>How far a player's own strings may lie from the typical values, and an instrument from the truth.</summary>
public sealed record LossSpread
{
    /// <summary>The standard deviation of the settling loss is one part in so many of it.</summary>
    public double SettlingTrust { get; init; } = 4;

    /// <summary>The standard deviation of the loss per hour is one part in so many of it.</summary>
    public double PerHourTrust { get; init; } = 3;

    /// <summary>Standard deviation of one reading, the first included, in percentage points.</summary>
    public double ReadingNoise { get; init; } = 1.5;
}
