namespace TagPage.Core.Customising.Planning;

/// <summary>By how much each figure ends above or below what was wanted; zero where nothing was.</summary>
public readonly record struct Miss(double MassG, double BalanceMm, double SwingWeight)
{
    // Far below what any instrument shows.
    private const double Nothing = 1e-3;

    // Half of it in the figure planned from, half in the one planned for.
    private const double Rounded = 0.1;

    public static Miss Of(Body after, Wanted wanted) => new(
        after.MassG - (wanted.MassG ?? after.MassG),
        (after.BalanceCm - (wanted.BalanceCm ?? after.BalanceCm)) * 10,
        after.SwingWeight - (wanted.SwingWeight ?? after.SwingWeight));

    /// <summary>The figures that give way.</summary>
    public Figures Figures =>
        (Math.Abs(MassG) > Nothing ? Figures.Mass : Figures.None)
        | (Math.Abs(BalanceMm) > Nothing ? Figures.Balance : Figures.None)
        | (Math.Abs(SwingWeight) > Nothing ? Figures.SwingWeight : Figures.None);

    /// <summary>The figures that give way by more than figures kept to a tenth can be apart for the rounding alone.</summary>
    public Figures BeyondRounding =>
        (Math.Abs(MassG) > Rounded ? Figures.Mass : Figures.None)
        | (Math.Abs(BalanceMm) > Rounded ? Figures.Balance : Figures.None)
        | (Math.Abs(SwingWeight) > Rounded ? Figures.SwingWeight : Figures.None);

    /// <summary>For comparing: a gram weighs as much as a millimetre of balance and as one kg·cm².</summary>
    public double Squared => (MassG * MassG) + (BalanceMm * BalanceMm) + (SwingWeight * SwingWeight);

    /// <summary>The same, as plans weigh it.</summary>
    public double Sum => Math.Abs(MassG) + Math.Abs(BalanceMm) + Math.Abs(SwingWeight);
}
