namespace TagPage.Core.Customising.Planning;

/// <summary>
/// Brings a plan to steps that can be cut and weighed: of all ways to round up or down or a step further, within the limits,
/// those that miss least. A place that the plan leaves empty stays empty, so that nobody has to cut one more piece.
/// </summary>
public static class Rounding
{
    /// <summary>Grams, unless the shop says otherwise.</summary>
    public const double StartingStepG = 0.5;

    // Above this many pieces each is only rounded up or down, and above the second one each by itself.
    private const int MostWide = 9, MostTried = 18;

    /// <summary>The ways of rounding it that end nearest to a goal, the nearest first.</summary>
    /// <param name="plan">Unrounded.</param>
    /// <param name="goal">What it is for, or where it ends.</param>
    /// <param name="stepG">Of each piece; a pair has two.</param>
    /// <param name="count">How many at most.</param>
    /// <returns>Grams at each place, and then of each removable piece.</returns>
    public static IReadOnlyList<double[]> Near(Plan plan, Wanted goal, double stepG, int count)
    {
        var pieces = plan.AddedG.Concat(plan.RemovedG).Count(grams => grams > 0);
        double[][] choices =
        [
            .. plan.Frame.Places.Zip(plan.AddedG, (place, grams) => Steps(grams, place.Paired ? 2 * stepG : stepG, place.MostG, pieces)),
            .. plan.Frame.Removable.Zip(plan.RemovedG, (earlier, grams) => Off(Steps(grams, stepG, earlier.Grams, pieces), grams, earlier.Grams)),
        ];
        return new RoundingSearch(plan.Frame, choices, goal).Best(count);
    }

    private static double[] Steps(double grams, double step, double most, int pieces)
    {
        if (grams <= 0)
            return [0];
        var (down, up) = (Math.Floor(Settled(grams / step)), Math.Ceiling(Settled(grams / step)));
        var further = pieces > MostWide ? 0 : 1;
        double[] steps = [.. Enumerable.Range((int)down - further, (int)(up - down) + 1 + (2 * further)).Select(i => i * step).Where(g => g >= 0 && g <= most + 1e-9)];
        return steps.Length == 0 ? [0] : pieces > MostTried ? [steps.MinBy(g => Math.Abs(g - grams))] : steps;
    }

    // What comes off wholly need not be whole steps.
    private static double[] Off(double[] steps, double grams, double whole) => grams < whole - 1e-9 || steps.Contains(whole) ? steps : [.. steps, whole];

    // What is whole but for the last digits of a double is whole.
    private static double Settled(double steps) => Math.Round(steps, 9);
}
