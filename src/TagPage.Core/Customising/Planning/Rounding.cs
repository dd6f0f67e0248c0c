namespace TagPage.Core.Customising.Planning;

/// <summary>Brings a plan to steps that can be cut and weighed: of all ways to round up or down, the one that misses least.</summary>
public static class Rounding
{
    /// <summary>Grams, unless the shop says otherwise.</summary>
    public const double StartingStepG = 0.5;

    // Above this many places each is rounded by itself.
    private const int MostTried = 12;

    /// <param name="plan">Unrounded.</param>
    /// <param name="wanted">What it is for; where it misses, its own result is what to keep to.</param>
    /// <param name="stepG">Of each piece; a pair has two.</param>
    public static Plan Rounded(Plan plan, Wanted wanted, double stepG)
    {
        var goal = Miss.Of(plan.After, wanted).Figures == Figures.None ? wanted : Wanted.Of(plan.After);
        double[][] choices =
        [
            .. plan.Frame.Places.Zip(plan.AddedG, (place, grams) => Steps(grams, place.Paired ? 2 * stepG : stepG, place.MostG)),
            .. plan.Frame.Removable.Zip(plan.RemovedG, (earlier, grams) => Steps(grams, stepG, earlier.Grams)),
        ];
        return Ways(choices).Select(way => With(plan, way)).MinBy(rounded => Miss.Of(rounded.After, goal).Squared)!;
    }

    private static double[] Steps(double grams, double step, double most)
    {
        var (down, up) = (Math.Floor(Settled(grams / step)) * step, Math.Min(Math.Ceiling(Settled(grams / step)) * step, most));
        return up > down ? [down, up] : [down];
    }

    // What is whole but for the last digits of a double is whole.
    private static double Settled(double steps) => Math.Round(steps, 9);

    private static double[][] Ways(double[][] choices)
    {
        var open = choices.Count(choice => choice.Length > 1);
        double[][] ways = [[]];
        foreach (var choice in choices)
            ways = [.. ways.SelectMany(_ => open > MostTried ? choice[..1] : choice, (way, grams) => (double[])[.. way, grams])];
        return ways;
    }

    private static Plan With(Plan plan, double[] grams) =>
        plan with { AddedG = grams[..plan.AddedG.Count], RemovedG = grams[plan.AddedG.Count..] };
}
