namespace TagPage.Core.Forecast;

/// <summary>The expected loss of tension on one day, in per cent.</summary>
/// <param name="Day">By the end of which.</param>
/// <param name="Expected">What is expected.</param>
/// <param name="Low">With <paramref name="High"/> the range that holds 80 %; not below 0.</param>
/// <param name="High">Above the expected.</param>
public readonly record struct LossPoint(DateOnly Day, double Expected, double Low, double High);
