namespace TagPage.Core.Forecast.Learning;

/// <summary>
/// How strings lose tension: loss % = A · log10(1 + t/t₀) + B · H, with t days since the first reading, taken t₀ = 10
/// minutes after stringing, and H hours played. A and B are estimates that readings sharpen. A model assumption of this
/// project; that strings relax with the logarithm of time: Cross, Lindsey and Andruczyk 2000.
/// </summary>
public sealed class LossModel
{
    /// <summary>10 minutes in days.</summary>
    public const double FirstReadingAfterDays = 1.0 / 144;

    /// <summary>Between −z and +z lie 80 % of a normal distribution.</summary>
    public const double EightyPercent = 1.2815515655446004;

    private LossModel(Gaussian estimate, int readings)
    {
        (Estimate, Readings) = (estimate, readings);
        (Settling, PerHour) = (Math.Max(0, estimate.Mean[0]), Math.Max(0, estimate.Mean[1]));
    }

    /// <summary>A, then B.</summary>
    public Gaussian Estimate { get; }

    /// <summary>How many readings it has learned from.</summary>
    public int Readings { get; }

    /// <summary>Per cent for each tenfold of time; a negative mean counts as 0.</summary>
    public double Settling { get; }

    /// <summary>Per cent for each hour played; a negative mean counts as 0.</summary>
    public double PerHour { get; }

    /// <summary>
    /// Typical values, sharpened by a player's readings on that material. A bed's first reading is off too, and it shifts all
    /// losses of that bed alike: each bed has an offset of its own, as far from 0 as one reading.
    /// </summary>
    public static LossModel Of(LossValues typical, LossSpread spread, IReadOnlyCollection<IReadOnlyCollection<LossReading>> beds) =>
        new(beds.Aggregate(Prior(typical, spread), (known, bed) => WithBed(known, bed, spread.ReadingNoise).First(2)), beds.Sum(bed => bed.Count));

    internal static Gaussian Prior(LossValues typical, LossSpread spread) => Gaussian.Independent(
        (typical.Settling, typical.Settling / spread.SettlingTrust), (typical.PerHour, typical.PerHour / spread.PerHourTrust));

    /// <summary>A, B, and the offset of one more bed, after that bed's readings.</summary>
    internal static Gaussian WithBed(Gaussian known, IReadOnlyCollection<LossReading> bed, double noise) =>
        known.And(0, noise).After([.. bed.Select(r => ((IReadOnlyList<double>)RowOfBed(r.Days, r.Hours), r.Percent))], noise);

    internal static double[] RowOfBed(double days, double hours) => [LogOf(days), hours, 1];

    /// <summary>The expected loss, in per cent.</summary>
    public double Expected(double days, double hours) => (Settling * LogOf(days)) + (PerHour * hours);

    /// <summary>Half the width of the range that holds 80 %, in per cent; the instrument's noise is left out.</summary>
    public double HalfRange(double days, double hours) => EightyPercent * Math.Sqrt(Math.Max(0, Estimate.VarianceOf(Row(days, hours))));

    private static double[] Row(double days, double hours) => [LogOf(days), hours];

    private static double LogOf(double days) => Math.Log10(1 + (Math.Max(0, days) / FirstReadingAfterDays));
}
