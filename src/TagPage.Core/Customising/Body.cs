namespace TagPage.Core.Customising;

/// <summary>
/// A racket as a rigid body. Added mass follows the parallel-axis theorem; the axis of the swing weight lies 10 cm from
/// the butt (Taraborrelli et al., Sports Engineering 22, 2019).
/// </summary>
/// <param name="MassG">Grams.</param>
/// <param name="BalanceCm">Centre of mass in cm from the butt.</param>
/// <param name="SwingWeight">Moment of inertia about that axis in kg·cm², face first.</param>
public readonly record struct Body(double MassG, double BalanceCm, double SwingWeight)
{
    /// <summary>Where the axis of the swing weight lies, in cm from the butt.</summary>
    public const double AxisCm = 10;

    /// <summary>Moment of inertia about the centre of mass in kg·cm².</summary>
    public double RecoilWeight => SwingWeight - InertiaOf(MassG, BalanceCm);

    /// <summary>The body with small masses added; grams below zero are taken away.</summary>
    public Body With(IEnumerable<AddedMass> masses) => With([.. masses]);

    /// <summary>The same.</summary>
    public Body With(params ReadOnlySpan<AddedMass> masses)
    {
        var (mass, moment, swing) = (MassG, MassG * BalanceCm, SwingWeight);
        foreach (var added in masses)
        {
            mass += added.Grams;
            moment += added.Grams * added.AtCm;
            swing += InertiaOf(added.Grams, added.AtCm);
        }
        return new Body(mass, moment / mass, swing);
    }

    private static double InertiaOf(double grams, double atCm) => grams / 1000 * (atCm - AxisCm) * (atCm - AxisCm);
}
