namespace TagPage.Core.Customising;

/// <summary>How the errors of a racket's figures go together, each from −1 to 1; 0 where they have nothing in common.</summary>
public readonly record struct Correlation(double MassBalance, double MassSwing, double BalanceSwing)
{
    /// <summary>Of two of the figures mass, balance and swing weight, counted from 0; whatever comes after them is independent.</summary>
    public double Between(int one, int other) => (Math.Min(one, other), Math.Max(one, other)) switch
    {
        (0, 1) => MassBalance,
        (0, 2) => MassSwing,
        (1, 2) => BalanceSwing,
        _ => 0,
    };
}
