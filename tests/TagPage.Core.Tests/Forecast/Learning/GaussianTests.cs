using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearRegression;
using TagPage.Core.Forecast.Learning;

namespace TagPage.Core.Tests.Forecast.Learning;

public class GaussianTests
{
    // Hoff, A First Course in Bayesian Statistical Methods, chapter 9 (oxygen uptake): group, age and uptake of 12 men.
    private static readonly double[] Uptake = [-0.87, -10.74, -3.27, -1.97, 7.50, -7.25, 17.05, 4.96, 10.40, 11.05, 0.26, 2.51];
    private static readonly double[] Age = [23, 22, 22, 25, 27, 20, 31, 23, 27, 28, 22, 24];

    private static readonly double[] LeastSquares = [-51.2939459, 13.1070904, 2.0947027, -0.3182438];
    private static readonly double[] WithGPrior = [-47.3482578, 12.0988527, 1.9335717, -0.2937635];

    [Fact]
    public void Hoffs_least_squares_come_out_under_a_prior_that_says_next_to_nothing() =>
        Expect(LeastSquares, Vague().After(Hoff(), 1).Mean, 1e-4);

    [Fact]
    public void Hoffs_posterior_mean_comes_out_under_his_g_prior()
    {
        // His prior covariance is g σ² (XᵀX)⁻¹ with g = 12 and mean 0; σ cancels from the mean, so any will do.
        const double noise = 3;
        var design = Design();
        var prior = (design.Transpose() * design).Inverse() * (12 * noise * noise);
        Expect(WithGPrior, new Gaussian(new double[4], prior.ToArray()).After(Hoff(), noise).Mean, 1e-6);
    }

    [Fact]
    public void MathNet_finds_the_same_least_squares() =>
        Expect([.. MultipleRegression.QR(Design(), Vector<double>.Build.Dense(Uptake))], Vague().After(Hoff(), 1).Mean, 1e-4);

    [Fact]
    public void A_full_prior_covariance_gives_what_MathNet_gives()
    {
        double[,] covariance = { { 4, 1.2, 0.3 }, { 1.2, 2, -0.4 }, { 0.3, -0.4, 1 } };
        double[] mean = [1, -2, 0.5];
        (IReadOnlyList<double>, double)[] measured = [(new double[] { 1, 2, 3 }, 4.5), (new double[] { 0.5, -1, 2 }, 1), (new double[] { 2, 0, 1 }, 3)];
        var learned = new Gaussian(mean, covariance).After(measured, 0.7);

        var (expectedMean, expectedCovariance) = WithMathNet(mean, covariance, measured, 0.7);
        Expect([.. expectedMean], learned.Mean, 1e-10);
        Expect([.. expectedCovariance.Enumerate()], [.. Matrix<double>.Build.DenseOfArray(learned.Covariance).Enumerate()], 1e-10);
        Assert.Equal(Quadratic([1, 1, 2], expectedCovariance), learned.VarianceOf([1, 1, 2]), 10);
    }

    [Fact]
    public void Sizes_that_do_not_fit_and_no_covariance_are_refused()
    {
        Assert.Throws<ArgumentException>(() => new Gaussian([1, 2], new double[,] { { 1 } }));
        Assert.Throws<ArgumentException>(() => new Gaussian([1, 2], new double[,] { { 1, 2 }, { 2, 1 } }));
        var prior = Gaussian.Independent((0, 1), (0, 1));
        Assert.Throws<ArgumentException>(() => prior.After([(new double[] { 1 }, 1)], 1));
        Assert.Same(prior, prior.After([], 1));
    }

    internal static (Vector<double> Mean, Matrix<double> Covariance) WithMathNet(
        double[] mean, double[,] covariance, IReadOnlyList<(IReadOnlyList<double> X, double Y)> measured, double noise)
    {
        var prior = Matrix<double>.Build.DenseOfArray(covariance).Inverse();
        var x = Matrix<double>.Build.DenseOfRows(measured.Select(m => m.X));
        var y = Vector<double>.Build.DenseOfEnumerable(measured.Select(m => m.Y));
        var after = (prior + (x.TransposeThisAndMultiply(x) / (noise * noise))).Inverse();
        return (after * ((prior * Vector<double>.Build.Dense(mean)) + (x.TransposeThisAndMultiply(y) / (noise * noise))), after);
    }

    internal static double Quadratic(double[] x, Matrix<double> covariance)
    {
        var vector = Vector<double>.Build.Dense(x);
        return vector * (covariance * vector);
    }

    private static Gaussian Vague() => Gaussian.Independent((0, 1e5), (0, 1e5), (0, 1e5), (0, 1e5));

    private static List<(IReadOnlyList<double> X, double Y)> Hoff() =>
        [.. Uptake.Select((y, i) => ((IReadOnlyList<double>)[.. Design().Row(i)], y))];

    private static Matrix<double> Design() => Matrix<double>.Build.Dense(12, 4, (row, column) => column switch
    {
        0 => 1,
        1 => row < 6 ? 0 : 1,
        2 => Age[row],
        _ => row < 6 ? 0 : Age[row],
    });

    private static void Expect(double[] expected, IReadOnlyList<double> actual, double within)
    {
        Assert.Equal(expected.Length, actual.Count);
        Assert.All(expected.Zip(actual), pair => Assert.Equal(pair.First, pair.Second, within));
    }
}
