namespace TagPage.Core.Forecast.Learning;

/// <summary>How a material typically loses tension, in per cent.</summary>
/// <param name="Threshold">Restring when it has lost so much.</param>
/// <param name="Settling">Loss with each tenfold of time, A.</param>
/// <param name="PerHour">Loss with each hour played, B.</param>
public sealed record LossValues(double Threshold, double Settling, double PerHour);
