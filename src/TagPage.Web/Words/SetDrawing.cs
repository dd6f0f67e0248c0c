using TagPage.Core.Customising;
using TagPage.Records.Customising;

namespace TagPage.Web.Words;

/// <summary>The frames of a set, figure by figure.</summary>
public sealed record SetDrawing(IReadOnlyList<int> Numbers, IReadOnlyList<SetDrawing.Figure> Figures)
{
    /// <param name="Name">Of the figure.</param>
    /// <param name="Unit">Its unit, as the shop likes it.</param>
    /// <param name="Decimals">That it is shown with.</param>
    /// <param name="Values">Of each frame.</param>
    /// <param name="Target">What they are brought to; null without a plan.</param>
    /// <param name="Spread">How far they are apart.</param>
    public sealed record Figure(string Name, string Unit, int Decimals, IReadOnlyList<double> Values, double? Target, Spread Spread);

    /// <param name="frames">Measured ones, as if all had strings in them.</param>
    /// <param name="target">What they are brought to; null without a plan.</param>
    /// <param name="words">In the shop's units.</param>
    public static SetDrawing Of(IReadOnlyList<FrameOnFile> frames, Body? target, SpecWords words)
    {
        var (mass, length) = (words.MassUnit, words.FromButtUnit);
        return new SetDrawing([.. frames.Select(frame => frame.Racket.Number)],
        [
            Of("Weight", mass.Name, mass.Decimals, mass.PerG, [.. frames.Select(frame => frame.StrungFigures.MassG)], target?.MassG),
            Of("Balance", length.Name, length.Decimals, length.PerCm, [.. frames.Select(frame => frame.StrungFigures.BalanceCm)], target?.BalanceCm),
            Of("Swing weight", "kg·cm²", 1, 1, [.. frames.Select(frame => frame.StrungFigures.SwingWeight)], target?.SwingWeight),
        ]);
    }

    private static Figure Of(string name, string unit, int decimals, double factor, Uncertain[] figures, double? target)
    {
        double[] values = [.. figures.Select(figure => figure.Value * factor)];
        return new Figure(name, unit, decimals, values, target * factor, Spread.Of(values, figures.Max(figure => figure.Off) * factor));
    }
}
