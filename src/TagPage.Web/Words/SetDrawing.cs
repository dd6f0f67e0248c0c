using TagPage.Core.Customising;
using TagPage.Records.Customising;

namespace TagPage.Web.Words;

/// <summary>The frames of a set, figure by figure, as they are and as a plan leaves them.</summary>
public sealed record SetDrawing(IReadOnlyList<int> Numbers, IReadOnlyList<SetDrawing.Figure> Figures)
{
    /// <param name="Name">Of the figure.</param>
    /// <param name="Unit">Its unit, as the shop likes it.</param>
    /// <param name="Decimals">That it is shown with.</param>
    /// <param name="Before">Of each frame.</param>
    /// <param name="After">Of each frame after the plan; null without one.</param>
    /// <param name="Target">What they are brought to; null where that is not the same, and without a plan.</param>
    public sealed record Figure(string Name, string Unit, int Decimals, IReadOnlyList<Uncertain> Before, IReadOnlyList<Uncertain>? After, double? Target)
    {
        /// <summary>How far they are apart.</summary>
        public Spread Spread => Of(Before);

        public Spread? SpreadAfter => After is { } after ? Of(after) : null;

        private static Spread Of(IReadOnlyList<Uncertain> values) => Spread.Of([.. values]);
    }

    /// <param name="frames">Measured ones, as if all had strings in them.</param>
    /// <param name="plan">What they are brought to; null without one.</param>
    /// <param name="words">In the shop's units.</param>
    public static SetDrawing Of(IReadOnlyList<FrameOnFile> frames, SetPlan? plan, SpecWords words)
    {
        var (mass, length) = (words.MassUnit, words.FromButtUnit);
        MeasuredBody[] before = [.. frames.Select(frame => frame.StrungFigures)];
        var after = plan is null ? null : frames.Select(frame => After(frame, plan, words)).ToArray();
        return new SetDrawing([.. frames.Select(frame => frame.Racket.Number)],
        [
            Of("Weight", mass.Name, mass.Decimals, mass.PerG, body => body.MassG, plan?.Goal.MassG),
            Of("Balance", length.Name, length.Decimals, length.PerCm, body => body.BalanceCm, plan?.Goal.BalanceCm),
            Of("Swing weight", "kg·cm²", 1, 1, body => body.SwingWeight, plan?.Goal.SwingWeight),
        ]);

        Figure Of(string name, string unit, int decimals, double factor, Func<MeasuredBody, Uncertain> figure, double? target) => new(
            name, unit, decimals, [.. before.Select(body => Times(figure(body), factor))], after is null ? null : [.. after.Select(body => Times(figure(body), factor))], target * factor);
    }

    // A frame that the others are to be like stays as it is.
    private static MeasuredBody After(FrameOnFile frame, SetPlan plan, SpecWords words) =>
        plan.Plans.FirstOrDefault(one => one.Frame == frame)?.After(words.Values.Tolerances) ?? frame.StrungFigures;

    private static Uncertain Times(Uncertain value, double factor) => new(value.Value * factor, value.Off * factor);
}
