namespace TagPage.Core.Forecast;

/// <summary>The starting values of breakage by wear.</summary>
public sealed record WearValues
{
    /// <summary>The Weibull shape: 1 breaks at any age alike, the larger the more all break at about the same hours.</summary>
    public double Shape { get; init; } = 3;

    /// <summary>How much the typical life counts against a player's own beds, above 1: about as much as so many breaks.</summary>
    public double Trust { get; init; } = 2;

    /// <summary>The limit is where one bed in so many would have broken.</summary>
    public double OneIn { get; init; } = 5;

    /// <summary>With fewer breaks by wear known there is no limit.</summary>
    public int FewestBreaks { get; init; } = 2;
}
