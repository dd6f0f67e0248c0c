namespace TagPage.Core.Forecast.Learning;

/// <summary>The starting values of breakage by wear.</summary>
public sealed record WearValues
{
    /// <summary>Standard deviation of the logarithm of a player's mean hours to break, around twice the useful life.</summary>
    public double LifeSpread { get; init; } = 0.5;

    /// <summary>The Weibull shape: 1 breaks at any age alike, the larger the more all break at about the same hours.</summary>
    public double Shape { get; init; } = 3.5;

    /// <summary>Standard deviation of the logarithm of a player's shape.</summary>
    public double ShapeSpread { get; init; } = 0.4;

    /// <summary>The limit is where one bed in so many would have broken.</summary>
    public double OneIn { get; init; } = 5;

    /// <summary>With fewer breaks by wear known there is no limit.</summary>
    public int FewestBreaks { get; init; } = 2;
}
