namespace TagPage.Core.Customising.Planning;

/// <summary>By how much each figure ends above or below what was wanted; zero where nothing was.</summary>
public readonly record struct Miss(double MassG, double BalanceMm, double SwingWeight)
{
    // Far below what any instrument shows.
    private const double Nothing = 1e-3;

    public static Miss Of(Body after, Wanted wanted) => new(
        after.MassG - (wanted.MassG ?? after.MassG),
        (after.BalanceCm - (wanted.BalanceCm ?? after.BalanceCm)) * 10,
        after.SwingWeight - (wanted.SwingWeight ?? after.SwingWeight));

    /// <summary>The figures that give way.</summary>
    public Figures Figures =>
        (Math.Abs(MassG) > Nothing ? Figures.Mass : Figures.None)
        | (Math.Abs(BalanceMm) > Nothing ? Figures.Balance : Figures.None)
        | (Math.Abs(SwingWeight) > Nothing ? Figures.SwingWeight : Figures.None);

    /// <summary>For comparing: a gram weighs as much as a millimetre of balance and as one kg·cm².</summary>
    public double Squared => (MassG * MassG) + (BalanceMm * BalanceMm) + (SwingWeight * SwingWeight);
}
