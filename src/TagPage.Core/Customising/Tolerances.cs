namespace TagPage.Core.Customising;

/// <summary>How far off the shop's own instruments may be. The start is common practice, no source.</summary>
public sealed record Tolerances
{
    public double MassG { get; init; } = 0.1;
    public double LengthMm { get; init; } = 1;
    public double SwingWeight { get; init; } = 1;

    /// <summary>Seconds, of one swing there and back: twenty of them timed by hand, start and stop each off by <see cref="SwingTimes.HandS"/>.</summary>
    public double PeriodS { get; init; } = 0.007;

    private double LengthCm => LengthMm / 10;

    public Uncertain Mass(double grams) => new(grams, MassG);

    public Uncertain Length(double cm) => new(cm, LengthCm);

    public Uncertain Swing(double swingWeight) => new(swingWeight, SwingWeight);
}
