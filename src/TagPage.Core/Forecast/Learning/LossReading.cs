namespace TagPage.Core.Forecast.Learning;

/// <summary>A loss of tension that was measured.</summary>
/// <param name="Days">Since the first reading of these strings, 0 or more.</param>
/// <param name="Hours">Played since that reading, 0 or more.</param>
/// <param name="Percent">Of the tension at the first reading; negative for a gain.</param>
public readonly record struct LossReading(double Days, double Hours, double Percent);
