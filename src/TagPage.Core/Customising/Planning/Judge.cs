namespace TagPage.Core.Customising.Planning;

/// <summary>
/// How good it is to change frames in some way. What counts is what each misses of what was given, and how far they end
/// apart: a gram as a millimetre as one kg·cm². A difference that measuring cannot tell counts as its square, so that
/// nobody chases it. Each gram has to win something, and so has each piece that is cut.
/// </summary>
internal sealed class Judge(Wanted wanted, Tolerances tolerances)
{
    /// <summary>What a gram and a piece have to win.</summary>
    public const double Gram = 0.2, Piece = 0.1;

    // Both readings are off, each by its own.
    private static readonly double _ofTwo = Math.Sqrt(2);

    /// <summary>A way of changing one frame; see <see cref="Planning.Way"/>.</summary>
    public Way Way(PlanFrame frame, double[] grams, Body after)
    {
        var places = frame.Places.Count;
        var (added, pieces) = (0.0, 0);
        for (var i = 0; i < grams.Length; i++)
        {
            added += i < places ? grams[i] : 0;
            pieces += grams[i] > 0 ? 1 : 0;
        }
        var miss = Miss.Of(after, wanted);
        return new(grams, after, Told(miss, 1), Gram * added, Piece * pieces, (miss.Sum, miss.Squared));
    }

    /// <summary>What counts of a difference between frames, in all its figures.</summary>
    public double Told(Miss apart) => Told(apart, _ofTwo);

    private double Told(Miss by, double readings) =>
        Told(by.MassG, readings * tolerances.MassG) + Told(by.BalanceMm, readings * tolerances.LengthMm) + Told(by.SwingWeight, readings * tolerances.SwingWeight);

    // The square meets the straight line without a corner (P. J. Huber, Annals of Mathematical Statistics 35, 1964).
    private static double Told(double by, double tolerance) =>
        Math.Abs(by) < tolerance ? by * by / (2 * tolerance) : Math.Abs(by) - (tolerance / 2);
}
