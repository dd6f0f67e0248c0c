namespace TagPage.Core.Customising;

/// <summary>A figure and how far off it may be.</summary>
/// <param name="Value">In the figure's own unit.</param>
/// <param name="Off">In the same unit, never below zero.</param>
public readonly record struct Uncertain(double Value, double Off)
{
    /// <summary>What follows from other figures; see <see cref="Propagation"/>.</summary>
    /// <param name="formula">What is worked out, from as many values as there are figures.</param>
    /// <param name="from">Independent of each other.</param>
    public static Uncertain Of(Func<double[], double> formula, params Uncertain[] from) =>
        new(formula([.. from.Select(figure => figure.Value)]), new Propagation(from).Off(formula));
}
