namespace TagPage.Core.Customising;

/// <summary>A figure and how far off it may be. Independent errors add as squares (GUM, JCGM 100, 5.1.2).</summary>
/// <param name="Value">In the figure's own unit.</param>
/// <param name="Off">In the same unit, never below zero.</param>
public readonly record struct Uncertain(double Value, double Off)
{
    /// <summary>What follows from other figures: each is moved by its own uncertainty, both ways, and half the effect counts.</summary>
    /// <param name="formula">What is worked out, from as many values as there are figures.</param>
    /// <param name="from">Independent of each other.</param>
    public static Uncertain Of(Func<double[], double> formula, params Uncertain[] from)
    {
        double[] values = [.. from.Select(f => f.Value)];
        var squares = 0.0;
        for (var i = 0; i < from.Length; i++)
        {
            var half = (Moved(formula, values, i, from[i].Off) - Moved(formula, values, i, -from[i].Off)) / 2;
            squares += half * half;
        }
        return new Uncertain(formula(values), Math.Sqrt(squares));
    }

    private static double Moved(Func<double[], double> formula, double[] values, int which, double by)
    {
        double[] moved = [.. values];
        moved[which] += by;
        return formula(moved);
    }
}
