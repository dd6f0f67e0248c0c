using TagPage.Core.Customising;
using TagPage.Records.Customising;

namespace TagPage.Web.Words;

/// <summary>How near the frames of a set come to their common figures, once pieces are rounded.</summary>
public static class SetWords
{
    /// <summary>What stands before the common figures.</summary>
    /// <param name="set">The plan.</param>
    /// <param name="isLike">Whether the figures are those of one frame that stays as it is.</param>
    /// <param name="words">In the shop's units.</param>
    public static string Before(SetPlan set, bool isLike, SpecWords words) =>
        set.IsReached ? (set.IsLeft ? "All are to come to " : $"All come within {Near(set, words)} of ")
        : isLike ? "Not all can come to "
        : set.IsCommon ? "They cannot all come to what is wanted with these places. The nearest that they have in common is "
        : "They cannot all be made the same with these places. The least apart they come near ";

    /// <summary>What stands after them.</summary>
    public static string After(SetPlan set, bool isLike, SpecWords words) =>
        set.IsReached ? "."
        : isLike ? $"; each is brought as near as it comes: {Ends(set, words)}."
        : set.IsCommon ? $": {words.Missed(set.Miss)}.{(set.IsLeft ? "" : $" With rounded pieces all come within {Near(set, words)} of it.")}"
        : $": {Ends(set, words)}.";

    private static string Near(SetPlan set, SpecWords words) =>
        $"{words.Mass(Farthest(set, body => body.MassG))}, {words.FromButt(Farthest(set, body => body.BalanceCm))} and {SpecWords.Swing(Farthest(set, body => body.SwingWeight))}";

    private static string Ends(SetPlan set, SpecWords words) =>
        string.Join("; ", set.Plans.Where(plan => !plan.IsReached).Select(plan => Ends(plan, words)));

    private static string Ends(CustomPlan plan, SpecWords words) =>
        $"racket {plan.Frame.Racket.Number} {(plan.Added.Count + plan.Removed.Count == 0 ? "stays" : "ends")} at {words.Figures(plan.Rounded.After)}";

    private static double Farthest(SetPlan set, Func<Body, double> figure) =>
        set.Plans.Max(plan => Math.Abs(figure(plan.Rounded.After) - figure(set.Target)));
}
