namespace TagPage.Core.Customising;

/// <summary>
/// A swing weight from a stop-watch: the racket hangs from an axis across the handle and swings face first (Brody, The
/// Physics Teacher 23, 1985; accuracy with a square pivot in Spurr et al., Procedia Engineering 72, 2014).
/// </summary>
/// <param name="MassG">Grams.</param>
/// <param name="BalanceCm">In cm from the butt.</param>
/// <param name="AxisCm">Where it hangs, in cm from the butt, on either side of the balance point.</param>
/// <param name="PeriodS">Seconds for one swing there and back.</param>
public readonly record struct Pendulum(double MassG, double BalanceCm, double AxisCm, double PeriodS)
{
    /// <summary>Standard gravity in m/s², unless a shop knows better for its town.</summary>
    public const double StandardGravity = 9.80665;

    /// <summary>The largest half-swing that is still small: about 10°, which makes the result 0.4 % too large.</summary>
    public const double SmallSwingDegrees = 10;

    /// <summary>Moment of inertia about the axis it hangs from, in kg·cm².</summary>
    public double InertiaAboutAxis(double gravity = StandardGravity) =>
        MassG / 1000 * gravity * Math.Abs(BalanceCm - AxisCm) / 100 * PeriodS * PeriodS / (4 * Math.PI * Math.PI) * 10_000;

    /// <summary>The swing weight in kg·cm².</summary>
    public double SwingWeight(double gravity = StandardGravity) =>
        InertiaAboutAxis(gravity) + (MassG / 1000 * (Square(BalanceCm - Body.AxisCm) - Square(BalanceCm - AxisCm)));

    /// <summary>By what factor a wide swing takes longer than a small one.</summary>
    /// <param name="halfSwingRadians">From the lowest point to the turn.</param>
    public static double Lengthening(double halfSwingRadians) =>
        1 + (Square(halfSwingRadians) / 16) + (11 * Square(Square(halfSwingRadians)) / 3072);

    private static double Square(double x) => x * x;
}
