namespace TagPage.Core.Forecast.Learning;

/// <summary>
/// What the next reading of one bed should say: the central 99 % of what its player's other beds and its own readings so
/// far leave possible, the bed's offset and the instrument's noise included. What lies outside is asked about before it
/// teaches anything, so that one slip of the pen does not move a player's dates.
/// </summary>
/// <param name="Low">Loss in per cent; negative for a gain.</param>
/// <param name="High">Above <paramref name="Low"/>.</param>
public readonly record struct ExpectedLoss(double Low, double High)
{
    /// <summary>Between −z and +z lie 99 % of a normal distribution.</summary>
    public const double NinetyNinePercent = 2.5758293035489004;

    /// <summary>Whether a loss lies outside.</summary>
    public bool IsDoubtful(double percent) => percent < Low || percent > High;

    /// <param name="typical">Of the main strings' material.</param>
    /// <param name="spread">How far beds and readings lie from it.</param>
    /// <param name="others">The player's other beds of that material.</param>
    /// <param name="bed">Earlier and later readings of the same bed.</param>
    /// <param name="days">Since the bed's first reading.</param>
    /// <param name="hours">Played since then.</param>
    public static ExpectedLoss Of(
        LossValues typical, LossSpread spread, IReadOnlyCollection<IReadOnlyCollection<LossReading>> others, IReadOnlyCollection<LossReading> bed, double days, double hours)
    {
        var known = LossModel.WithBed(LossModel.Of(typical, spread, others).Estimate, bed, spread.ReadingNoise);
        var row = LossModel.RowOfBed(days, hours);
        var expected = Gaussian.Dot(row, known.Mean);
        var half = NinetyNinePercent * Math.Sqrt(known.VarianceOf(row) + (spread.ReadingNoise * spread.ReadingNoise));
        return new ExpectedLoss(expected - half, expected + half);
    }
}
