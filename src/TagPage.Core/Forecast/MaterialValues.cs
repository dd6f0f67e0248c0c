namespace TagPage.Core.Forecast;

/// <summary>The starting values of one material in one sport.</summary>
/// <param name="LifeHours">Hours of play a string of reference diameter lasts an average hitter.</param>
public sealed record MaterialValues(double LifeHours);
