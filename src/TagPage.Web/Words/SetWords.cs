using TagPage.Core.Customising;
using TagPage.Core.Customising.Planning;
using TagPage.Records.Customising;

namespace TagPage.Web.Words;

/// <summary>What becomes of the frames of a set, once pieces are rounded.</summary>
public static class SetWords
{
    /// <summary>What stands before the figures that the frames have in common, or that they are to be like.</summary>
    /// <param name="set">The plan.</param>
    /// <param name="isLike">Whether the figures are those of one frame that stays as it is.</param>
    /// <param name="words">In the shop's units.</param>
    public static string Before(SetPlan set, bool isLike, SpecWords words) =>
        set.Common is { } common ? (set.IsReached ? $"All come within {Near(set, common, words)} of " : "With these places they cannot all reach what is wanted. The nearest that they can share is ")
        : isLike ? "Not all can reach "
        : set.IsWantedReached ? $"All come within {NearWanted(set, words)} of what is wanted. With these places they cannot be made the same in everything else, or only with more mass than that is worth"
        : set.Wanted != new Wanted() ? "With these places they cannot all reach what is wanted and be made the same, or only with more mass than that is worth"
        : "With these places they cannot be made the same, or only with more mass than that is worth";

    /// <summary>Those figures; nothing where there are none.</summary>
    public static string Figures(SetPlan set, bool isLike, SpecWords words) =>
        set.Common is { } common ? words.Figures(common)
        : isLike ? words.Figures(new Body(set.Wanted.MassG!.Value, set.Wanted.BalanceCm!.Value, set.Wanted.SwingWeight!.Value))
        : "";

    /// <summary>What stands after them.</summary>
    public static string After(SetPlan set, bool isLike, SpecWords words) =>
        set.IsReached ? "."
        : set.Common is { } common ? $": {words.Missed(set.Miss)}. With rounded pieces all come within {Near(set, common, words)} of it."
        : isLike ? $"; each is brought as near as is worth the mass: {Ends(set.Plans.Where(plan => !plan.IsReached), words)}."
        : $": {Ends(set.Plans, words)}.";

    /// <summary>Why nothing is to be done to any of them.</summary>
    public static string Left(SetPlan set, SpecWords words) => $"Leave them as they are: {(
        !set.CouldBeNearer ? $"one or two pieces in steps of {words.Piece(words.Values.StepG)} would not bring them any nearer to each other or to what is wanted."
        : $"pieces in steps of {words.Piece(words.Values.StepG)} would gain too little for the mass they add{(set.Wanted == new Wanted() ? "" : ", or bring them nearer to what is wanted only by moving them apart, or nearer to each other only by moving them away from it")}.")}";

    private static string Near(SetPlan set, Body common, SpecWords words) =>
        $"{words.Mass(Farthest(set, body => body.MassG - common.MassG))}, {words.FromButt(Farthest(set, body => body.BalanceCm - common.BalanceCm))} and {SpecWords.Swing(Farthest(set, body => body.SwingWeight - common.SwingWeight))}";

    private static string NearWanted(SetPlan set, SpecWords words) => string.Join(" and ", new[]
    {
        set.Wanted.MassG is { } mass ? words.Mass(Farthest(set, body => body.MassG - mass)) : "",
        set.Wanted.BalanceCm is { } balance ? words.FromButt(Farthest(set, body => body.BalanceCm - balance)) : "",
        set.Wanted.SwingWeight is { } swing ? SpecWords.Swing(Farthest(set, body => body.SwingWeight - swing)) : "",
    }.Where(w => w.Length > 0));

    private static string Ends(IEnumerable<CustomPlan> plans, SpecWords words) => string.Join("; ", plans.Select(plan =>
        $"racket {plan.Frame.Racket.Number} {(plan.IsLeft ? "stays" : "ends")} at {words.Figures(plan.Rounded.After)}"));

    private static double Farthest(SetPlan set, Func<Body, double> off) => set.Plans.Max(plan => Math.Abs(off(plan.Rounded.After)));
}
