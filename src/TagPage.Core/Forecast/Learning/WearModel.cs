namespace TagPage.Core.Forecast.Learning;

/// <summary>
/// After how many hours a player's strings of one material break by wear: Weibull with mean life μ and shape k, both
/// unknown, ln μ and ln k normal beforehand. Breaks by wear are events, beds that came out otherwise are right-censored at
/// their hours. What is likely afterwards is summed over a grid. A model assumption of this project.
/// </summary>
public sealed class WearModel
{
    private readonly WearPoint[] _points;

    private WearModel(WearPoint[] points) => _points = points;

    /// <summary>The mean life to expect, in hours.</summary>
    public double MeanLife => _points.Sum(point => point.Weight * point.MeanLife);

    /// <summary>The shape to expect.</summary>
    public double MeanShape => _points.Sum(point => point.Weight * point.Shape);

    /// <param name="lifeHours">Base hours × hitting, L; before any bed strings break after 2·L on average.</param>
    /// <param name="values">How far a player may lie from that.</param>
    /// <param name="brokeAfter">Hours after which beds broke by wear, each above 0.</param>
    /// <param name="cameOutAfter">Hours after which beds came out otherwise, each above 0.</param>
    public static WearModel Of(double lifeHours, WearValues values, IReadOnlyList<double> brokeAfter, IReadOnlyList<double> cameOutAfter) =>
        new(new WearGrid(lifeHours, values, brokeAfter, cameOutAfter).Points());

    /// <summary>The chance to last so many hours.</summary>
    public double Survival(double hours) => At(Math.Log(hours)).Survival;

    /// <summary>The hours that this share of beds lasts, 0 to 1 (both excluded), by Newton's steps between halvings.</summary>
    public double HoursLastedBy(double share)
    {
        var wear = Math.Log(-Math.Log(share));
        var (low, high) = (_points.Min(point => point.LogHoursAt(wear)), _points.Max(point => point.LogHoursAt(wear)));
        var logHours = _points.Sum(point => point.Weight * point.LogHoursAt(wear));
        while (high - low > Precision)
        {
            var (survival, slope) = At(logHours);
            (low, high) = survival > share ? (logHours, high) : (low, logHours);
            var step = (survival - share) / slope;
            if (Math.Abs(step) < Precision)
                break;
            logHours = logHours - step is var next && next > low && next < high ? next : (low + high) / 2;
        }
        return Math.Exp(logHours);
    }

    private const double Precision = 1e-10;

    private (double Survival, double Slope) At(double logHours)
    {
        var (survival, slope) = (0.0, 0.0);
        foreach (var point in _points)
        {
            var wear = Math.Exp(point.Shape * (logHours - point.LogScale));
            var lasting = point.Weight * Math.Exp(-wear);
            survival += lasting;
            slope -= lasting > 0 ? lasting * wear * point.Shape : 0;
        }
        return (survival, slope);
    }
}
