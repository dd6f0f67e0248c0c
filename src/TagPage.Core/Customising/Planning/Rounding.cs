namespace TagPage.Core.Customising.Planning;

/// <summary>
/// Brings a plan to steps that can be cut and weighed: of all ways to round up or down or a step further, within the limits,
/// the one that misses least. A place that the plan leaves empty stays empty, so that nobody has to cut one more piece. Where
/// rounding takes away all that a plan brings, nothing is left to do.
/// </summary>
public static class Rounding
{
    /// <summary>Grams, unless the shop says otherwise.</summary>
    public const double StartingStepG = 0.5;

    // Above this many pieces each is only rounded up or down, and above the second one each by itself.
    private const int MostWide = 9, MostTried = 18;

    /// <param name="plan">Unrounded.</param>
    /// <param name="wanted">What it is for; where it misses, its own result is what to keep to.</param>
    /// <param name="stepG">Of each piece; a pair has two.</param>
    public static Plan Rounded(Plan plan, Wanted wanted, double stepG)
    {
        var goal = Miss.Of(plan.After, wanted).Figures == Figures.None ? wanted : Wanted.Of(plan.After);
        var pieces = plan.AddedG.Concat(plan.RemovedG).Count(grams => grams > 0);
        double[][] choices =
        [
            .. plan.Frame.Places.Zip(plan.AddedG, (place, grams) => Steps(grams, place.Paired ? 2 * stepG : stepG, place.MostG, pieces)),
            .. plan.Frame.Removable.Zip(plan.RemovedG, (earlier, grams) => Off(Steps(grams, stepG, earlier.Grams, pieces), grams, earlier.Grams)),
        ];
        var best = new RoundingSearch(plan.Frame, choices, goal).Best();
        var rounded = plan with { AddedG = best[..plan.AddedG.Count], RemovedG = best[plan.AddedG.Count..] };
        return IsNearer(rounded, IsNearer(plan, wanted) ? wanted : goal) ? rounded : Nothing(plan);
    }

    /// <summary>The same for a set: nothing is done to any of its frames where that would bring them no nearer to each other and to what is given.</summary>
    /// <param name="plans">Unrounded, one a frame.</param>
    /// <param name="wanted">What is given of the target.</param>
    /// <param name="stepG">Of each piece.</param>
    public static IReadOnlyList<Plan> Together(IReadOnlyList<Plan> plans, Wanted wanted, double stepG)
    {
        var target = wanted.Or(plans[0].After);
        Plan[] rounded = [.. plans.Select(plan => Rounded(plan, target, stepG))];
        var untouched = Apart(plans.Select(plan => plan.Frame.Now), wanted);
        return Apart(plans.Select(plan => plan.After), wanted) < untouched && Apart(rounded.Select(plan => plan.After), wanted) >= untouched
            ? [.. plans.Select(Nothing)]
            : rounded;
    }

    private static bool IsNearer(Plan plan, Wanted wanted) => Miss.Of(plan.After, wanted).Squared < Miss.Of(plan.Frame.Now, wanted).Squared;

    private static Plan Nothing(Plan plan) => plan with { AddedG = [.. plan.AddedG.Select(_ => 0.0)], RemovedG = [.. plan.RemovedG.Select(_ => 0.0)] };

    // What is given counts as one more frame.
    private static double Apart(IEnumerable<Body> frames, Wanted wanted)
    {
        Body[] all = [.. frames];
        return new Miss(
            Range(all.Select(body => body.MassG), wanted.MassG),
            Range(all.Select(body => body.BalanceCm), wanted.BalanceCm) * 10,
            Range(all.Select(body => body.SwingWeight), wanted.SwingWeight)).Squared;
    }

    private static double Range(IEnumerable<double> values, double? given)
    {
        double[] all = given is { } one ? [.. values, one] : [.. values];
        return all.Max() - all.Min();
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
