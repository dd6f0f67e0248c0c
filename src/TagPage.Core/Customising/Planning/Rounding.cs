namespace TagPage.Core.Customising.Planning;

/// <summary>
/// Brings a plan to steps that can be cut and weighed: of all ways to round up or down or a step further, within the limits,
/// the one that misses least. A place that the plan leaves empty stays empty, so that nobody has to cut one more piece. Where
/// rounded pieces come no nearer to what is wanted than the frame is, nothing is left to do.
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
        var rounded = Stepped(plan, goal, stepG);
        return Miss.Of(rounded.After, wanted).IsLessThan(Miss.Of(plan.Frame.Now, wanted)) ? rounded : Nothing(plan);
    }

    private static Plan Stepped(Plan plan, Wanted goal, double stepG)
    {
        var pieces = plan.AddedG.Concat(plan.RemovedG).Count(grams => grams > 0);
        double[][] choices =
        [
            .. plan.Frame.Places.Zip(plan.AddedG, (place, grams) => Steps(grams, place.Paired ? 2 * stepG : stepG, place.MostG, pieces)),
            .. plan.Frame.Removable.Zip(plan.RemovedG, (earlier, grams) => Off(Steps(grams, stepG, earlier.Grams, pieces), grams, earlier.Grams)),
        ];
        var best = new RoundingSearch(plan.Frame, choices, goal).Best();
        return plan with { AddedG = best[..plan.AddedG.Count], RemovedG = best[plan.AddedG.Count..] };
    }

    /// <summary>The same for a set: nothing is done to any of its frames where that would bring them no nearer to what is given and to each other.</summary>
    /// <param name="plans">Unrounded, one a frame.</param>
    /// <param name="wanted">What is given of the target.</param>
    /// <param name="stepG">Of each piece.</param>
    public static IReadOnlyList<Plan> Together(IReadOnlyList<Plan> plans, Wanted wanted, double stepG)
    {
        Plan[] rounded = [.. plans.Select(plan => Rounded(plan, Wanted.Of(plan.After), stepG))];
        var set = new SetNearness([.. plans.Select(plan => plan.Frame.Now)], wanted);
        return Alike(rounded).Prepend(rounded).FirstOrDefault(some => set.IsNearer([.. some.Select(plan => plan.After)])) ?? [.. plans.Select(Nothing)];
    }

    /// <summary>The same for frames that are to be like another one, each as near as it comes.</summary>
    public static IReadOnlyList<Plan> Like(Body other, IReadOnlyList<Plan> plans, double stepG)
    {
        Plan[] rounded = [.. plans.Select(plan => Rounded(plan, Wanted.Of(other), stepG))];
        return new SetNearness([.. plans.Select(plan => plan.Frame.Now), other], Wanted.Of(other)).IsNearer([.. rounded.Select(plan => plan.After), other])
            ? rounded
            : [.. plans.Select(Nothing)];
    }

    // Rounding frame by frame can pull apart what is the same to a hair; the same pieces on all leave them as near as they were.
    private static IEnumerable<Plan[]> Alike(Plan[] plans) =>
        from like in plans
        where plans.All(plan => plan.RemovedG.All(grams => grams == 0) && plan.Frame.Places.Count == like.AddedG.Count
            && plan.Frame.Places.Zip(like.Frame.Places, like.AddedG).All(place => place.First with { MostG = 0 } == place.Second with { MostG = 0 } && place.Third <= place.First.MostG))
        select plans.Select(plan => plan with { AddedG = like.AddedG }).ToArray();

    private static Plan Nothing(Plan plan) => plan with { AddedG = [.. plan.AddedG.Select(_ => 0.0)], RemovedG = [.. plan.RemovedG.Select(_ => 0.0)] };

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
