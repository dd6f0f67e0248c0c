namespace TagPage.Core.Customising;

/// <summary>
/// The law of propagation of uncertainty: each figure is moved by its own uncertainty, both ways, and half the effect counts
/// (GUM, JCGM 100:2008, 5.1.3 note 2). Effects add as squares, those of figures whose errors go together also as products
/// (5.2.2); results that follow from the same figures go together themselves (H.2.3).
/// </summary>
/// <param name="from">The figures that all else follows from.</param>
/// <param name="goTogether">How the errors of two different ones go together, from −1 to 1; null where they are independent.</param>
public sealed class Propagation(IReadOnlyList<Uncertain> from, Func<int, int, double>? goTogether = null)
{
    // A figure that is its own result is as open as it was, whatever the last digits of a double say.
    private const int Digits = 12;

    private readonly double[] _values = [.. from.Select(figure => figure.Value)];

    /// <summary>What is open about a result.</summary>
    /// <param name="formula">What is worked out, from as many values as there are figures.</param>
    public double Off(Func<double[], double> formula) => Math.Round(Math.Sqrt(Math.Max(0, Product(Effects(formula), Effects(formula)))), Digits);

    /// <summary>How the errors of two results go together, from −1 to 1; 0 where one of them is exact.</summary>
    public double Together(Func<double[], double> one, Func<double[], double> other)
    {
        var (a, b) = (Effects(one), Effects(other));
        var both = Math.Sqrt(Product(a, a) * Product(b, b));
        return both > 0 ? Math.Clamp(Product(a, b) / both, -1, 1) : 0;
    }

    private double[] Effects(Func<double[], double> formula) =>
        [.. from.Select((figure, i) => (Moved(formula, i, figure.Off) - Moved(formula, i, -figure.Off)) / 2)];

    private double Moved(Func<double[], double> formula, int which, double by)
    {
        double[] moved = [.. _values];
        moved[which] += by;
        return formula(moved);
    }

    private double Product(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
            for (var j = 0; goTogether is not null && j < b.Length; j++)
                sum += i == j ? 0 : a[i] * b[j] * goTogether(i, j);
        }
        return sum;
    }
}
