using TagPage.Core.Customising;
using TagPage.Records.Customising;

namespace TagPage.Web.Words;

/// <summary>The frames of a set, figure by figure.</summary>
public sealed record SetDrawing(IReadOnlyList<int> Numbers, IReadOnlyList<SetDrawing.Figure> Figures)
{
    /// <param name="Name">Of the figure.</param>
    /// <param name="Unit">Its unit.</param>
    /// <param name="Values">Of each frame.</param>
    /// <param name="Target">What they are brought to; null without a plan.</param>
    /// <param name="Spread">How far they are apart.</param>
    public sealed record Figure(string Name, string Unit, IReadOnlyList<double> Values, double? Target, Spread Spread);

    /// <param name="frames">Measured ones, as if all had strings in them.</param>
    /// <param name="target">What they are brought to; null without a plan.</param>
    /// <param name="tolerances">The shop's.</param>
    public static SetDrawing Of(IReadOnlyList<FrameOnFile> frames, Body? target, Tolerances tolerances)
    {
        Body[] bodies = [.. frames.Select(frame => frame.Strung!.Value)];
        return new SetDrawing([.. frames.Select(frame => frame.Racket.Number)],
        [
            Of("Weight", "g", bodies, target, body => body.MassG, tolerances.MassG),
            Of("Balance", "mm", bodies, target, body => body.BalanceCm * 10, tolerances.LengthMm),
            Of("Swing weight", "kg·cm²", bodies, target, body => body.SwingWeight, Math.Max(tolerances.SwingWeight, frames.Max(frame => frame.Figures.SwingWeight!.Value.Off))),
        ]);
    }

    private static Figure Of(string name, string unit, Body[] bodies, Body? target, Func<Body, double> value, double off)
    {
        double[] values = [.. bodies.Select(value)];
        return new Figure(name, unit, values, target is { } t ? value(t) : null, Spread.Of(values, off));
    }
}
