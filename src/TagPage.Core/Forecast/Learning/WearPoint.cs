namespace TagPage.Core.Forecast.Learning;

/// <summary>One way in which a player's strings may break, and how likely it is.</summary>
/// <param name="MeanLife">Hours.</param>
/// <param name="Shape">Of the Weibull distribution.</param>
/// <param name="LogScale">The logarithm of its scale in hours.</param>
/// <param name="Weight">All points' weights add up to 1.</param>
internal readonly record struct WearPoint(double MeanLife, double Shape, double LogScale, double Weight)
{
    /// <summary>The logarithm of the hours by which strings are worn so far; with log(−log(share)) a share of them lasts.</summary>
    public double LogHoursAt(double logWear) => LogScale + (logWear / Shape);
}
