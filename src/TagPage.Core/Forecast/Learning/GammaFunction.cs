namespace TagPage.Core.Forecast.Learning;

/// <summary>The gamma function for positive numbers, by Lanczos' approximation (g = 7, nine terms).</summary>
internal static class GammaFunction
{
    private const double G = 7;

    private static readonly double[] Terms =
    [
        0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
        12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
    ];

    public static double Of(double x)
    {
        if (x < 0.5)
            return Math.PI / (Math.Sin(Math.PI * x) * Of(1 - x));
        var shifted = x - 1;
        var sum = Terms[0];
        for (var i = 1; i < Terms.Length; i++)
            sum += Terms[i] / (shifted + i);
        var t = shifted + G + 0.5;
        return Math.Sqrt(2 * Math.PI) * Math.Pow(t, shifted + 0.5) * Math.Exp(-t) * sum;
    }
}
