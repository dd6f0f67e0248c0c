namespace TagPage.Core.Forecast.Learning;

/// <summary>
/// After how many hours a player's strings of one material break by wear: Weibull of known shape k, with θ = scaleᵏ
/// unknown, inverse gamma(a, b). Breaks by wear are events, beds that came out otherwise are right-censored at their
/// hours. A model assumption of this project.
/// </summary>
/// <param name="Shape">The Weibull shape k, above 0.</param>
/// <param name="A">Shape of the inverse gamma.</param>
/// <param name="B">Scale of the inverse gamma, in hoursᵏ.</param>
public sealed record WearModel(double Shape, double A, double B)
{
    /// <summary>What is assumed before any bed: on average strings break after twice their useful life.</summary>
    /// <param name="lifeHours">Base hours × hitting, L.</param>
    /// <param name="shape">The Weibull shape k: b = (a − 1) · (2·L / Γ(1 + 1/k))ᵏ.</param>
    /// <param name="a">Above 1; the larger, the less a player's own beds count.</param>
    public static WearModel Prior(double lifeHours, double shape, double a) =>
        new(shape, a, (a - 1) * Math.Pow(2 * lifeHours / GammaFunction.Of(1 + (1 / shape)), shape));

    /// <summary>a' = a + breaks, b' = b + Σ Tᵏ over all.</summary>
    public WearModel After(IEnumerable<double> brokeAfter, IEnumerable<double> cameOutAfter)
    {
        var breaks = brokeAfter.ToList();
        return this with { A = A + breaks.Count, B = B + breaks.Concat(cameOutAfter).Sum(hours => Math.Pow(hours, Shape)) };
    }

    /// <summary>The chance to last so many hours: (b / (b + Tᵏ))ᵃ.</summary>
    public double Survival(double hours) => Math.Pow(B / (B + Math.Pow(hours, Shape)), A);

    /// <summary>The hours that this share of beds lasts, 0 to 1 (both excluded): [b · (share^(−1/a) − 1)]^(1/k).</summary>
    public double HoursLastedBy(double share) => Math.Pow(B * (Math.Pow(share, -1 / A) - 1), 1 / Shape);
}
