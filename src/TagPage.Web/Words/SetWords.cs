using TagPage.Core.Customising;
using TagPage.Records.Customising;

namespace TagPage.Web.Words;

/// <summary>How near the frames of a set come to their common figures, once pieces are rounded.</summary>
public static class SetWords
{
    /// <summary>What stands before the common figures.</summary>
    public static string Before(SetPlan set, SpecWords words) =>
        !set.IsReached ? "Not all can come to "
        : $"All come within {words.Mass(Farthest(set, body => body.MassG))}, {words.FromButt(Farthest(set, body => body.BalanceCm))} and {SpecWords.Swing(Farthest(set, body => body.SwingWeight))} of ";

    /// <summary>What stands after them.</summary>
    public static string After(SetPlan set, SpecWords words) => set.IsReached ? "."
        : $", the nearest that they have in common: {string.Join("; ", set.Plans.Where(plan => !plan.IsReached).Select(plan => Ends(plan, words)))}.";

    private static string Ends(CustomPlan plan, SpecWords words) =>
        $"racket {plan.Frame.Racket.Number} {(plan.Added.Count + plan.Removed.Count == 0 ? "stays" : "ends")} at {words.Figures(plan.Rounded.After)}";

    private static double Farthest(SetPlan set, Func<Body, double> figure) =>
        set.Plans.Max(plan => Math.Abs(figure(plan.Rounded.After) - figure(set.Target)));
}
