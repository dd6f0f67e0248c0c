namespace TagPage.Core.Forecast.Learning;

/// <summary>
/// Several unknown numbers with a normal distribution, and what linear measurements with known noise say about them:
/// Bayesian linear regression in closed form, for any number of unknowns and a full prior covariance.
/// </summary>
public sealed record Gaussian
{
    /// <param name="mean">One entry an unknown.</param>
    /// <param name="covariance">Symmetric and positive definite, in rows.</param>
    /// <exception cref="ArgumentException">The sizes do not fit, or the covariance is not positive definite.</exception>
    public Gaussian(IReadOnlyList<double> mean, double[,] covariance)
    {
        if (mean.Count == 0 || covariance.GetLength(0) != mean.Count || covariance.GetLength(1) != mean.Count)
            throw new ArgumentException("Mean and covariance are of different sizes.", nameof(covariance));
        (Mean, Covariance) = (mean, covariance);
        Precision = PositiveDefinite.Inverse(covariance);
    }

    public IReadOnlyList<double> Mean { get; }

    public double[,] Covariance { get; }

    /// <summary>The covariance's inverse.</summary>
    public double[,] Precision { get; }

    /// <summary>Independent unknowns.</summary>
    public static Gaussian Independent(params (double Mean, double Deviation)[] unknowns)
    {
        var covariance = new double[unknowns.Length, unknowns.Length];
        for (var i = 0; i < unknowns.Length; i++)
            covariance[i, i] = unknowns[i].Deviation * unknowns[i].Deviation;
        return new([.. unknowns.Select(unknown => unknown.Mean)], covariance);
    }

    /// <summary>
    /// After measurements y = x·unknowns + noise: Σ = (Σ₀⁻¹ + XᵀX/σ²)⁻¹, m = Σ(Σ₀⁻¹m₀ + Xᵀy/σ²).
    /// Their order does not matter.
    /// </summary>
    /// <param name="measured">Rows x of the design with the value y that was measured.</param>
    /// <param name="noise">The standard deviation σ of one measurement, more than 0.</param>
    /// <exception cref="ArgumentException">A row is of another size.</exception>
    public Gaussian After(IReadOnlyCollection<(IReadOnlyList<double> X, double Y)> measured, double noise)
    {
        if (measured.Count == 0)
            return this;
        var precision = (double[,])Precision.Clone();
        var weighted = Times(Precision, Mean);
        foreach (var (x, y) in measured)
            Add(precision, weighted, x, y, noise * noise);
        var covariance = PositiveDefinite.Inverse(precision);
        return new Gaussian(Times(covariance, weighted), covariance);
    }

    /// <summary>With one more unknown, last, that has nothing to do with the others.</summary>
    public Gaussian And(double mean, double deviation)
    {
        var size = Mean.Count;
        var covariance = new double[size + 1, size + 1];
        Copy(Covariance, covariance, size);
        covariance[size, size] = deviation * deviation;
        return new Gaussian([.. Mean, mean], covariance);
    }

    /// <summary>What is known of the first unknowns alone, whatever the others are.</summary>
    public Gaussian First(int count)
    {
        var covariance = new double[count, count];
        Copy(Covariance, covariance, count);
        return new Gaussian([.. Mean.Take(count)], covariance);
    }

    /// <summary>The variance of x·unknowns.</summary>
    public double VarianceOf(IReadOnlyList<double> x) => Dot(x, Times(Covariance, x));

    private static void Copy(double[,] from, double[,] to, int size)
    {
        for (var i = 0; i < size; i++)
            for (var j = 0; j < size; j++)
                to[i, j] = from[i, j];
    }

    internal static double Dot(IReadOnlyList<double> a, IReadOnlyList<double> b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Count; i++)
            sum += a[i] * b[i];
        return sum;
    }

    private static void Add(double[,] precision, double[] weighted, IReadOnlyList<double> x, double y, double variance)
    {
        if (x.Count != weighted.Length)
            throw new ArgumentException("A measurement is of another size than the unknowns.", nameof(x));
        for (var i = 0; i < weighted.Length; i++)
        {
            weighted[i] += x[i] * y / variance;
            for (var j = 0; j < weighted.Length; j++)
                precision[i, j] += x[i] * x[j] / variance;
        }
    }

    private static double[] Times(double[,] matrix, IReadOnlyList<double> vector)
    {
        var product = new double[vector.Count];
        for (var i = 0; i < product.Length; i++)
            for (var j = 0; j < product.Length; j++)
                product[i] += matrix[i, j] * vector[j];
        return product;
    }
}
