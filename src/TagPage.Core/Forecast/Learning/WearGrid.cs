namespace TagPage.Core.Forecast.Learning;

/// <summary>
/// What is likely of mean life and shape after a player's beds, on a grid over their logarithms. A coarse grid over ±6 and
/// ±4 prior standard deviations finds where anything is likely at all, and a finer one is laid there: some thousand points
/// do what a fixed grid needs eighty thousand for, and every list of what is due asks for many players.
/// </summary>
internal sealed class WearGrid
{
    private const double MostMean = 6, MostShape = 4;
    private const int CoarseMean = 61, CoarseShape = 41, FineMean = 121, FineShape = 121;

    // What is e⁻¹⁶ times as likely as the likeliest changes no digit that is shown.
    private const double Unlikely = -16;

    private readonly double _logMean;
    private readonly WearValues _values;
    private readonly double _breaks;
    private readonly double _sumOfLogs;
    private readonly double[] _logHours;

    public WearGrid(double lifeHours, WearValues values, IReadOnlyList<double> brokeAfter, IReadOnlyList<double> cameOutAfter)
    {
        (_logMean, _values, _breaks) = (Math.Log(2 * lifeHours), values, brokeAfter.Count);
        _sumOfLogs = brokeAfter.Sum(hours => Math.Log(hours));
        _logHours = [.. brokeAfter.Concat(cameOutAfter).Select(hours => Math.Log(hours))];
    }

    /// <summary>The likely points with their weights.</summary>
    public WearPoint[] Points()
    {
        var coarse = Likely(Steps(-MostMean, MostMean, CoarseMean), Steps(-MostShape, MostShape, CoarseShape));
        var fine = Likely(
            Around(coarse.Select(point => point.Mean), MostMean, CoarseMean, FineMean),
            Around(coarse.Select(point => point.Shape), MostShape, CoarseShape, FineShape));
        var sum = fine.Sum(point => point.Likelihood);
        return [.. fine.Select(point => ToPoint(point, point.Likelihood / sum))];
    }

    // In prior standard deviations from what is expected beforehand; K and LogScaleOverMean are what the shape stands for.
    private readonly record struct Place(double Mean, double Shape, double K, double LogScaleOverMean, double Likelihood);

    private List<Place> Likely(double[] means, double[] shapes)
    {
        var places = new List<Place>(means.Length * shapes.Length);
        foreach (var shape in shapes)
            AddRow(places, shape, means, AtEdge(shape, shapes));
        var most = places.Max(place => place.Likelihood);
        places.RemoveAll(place => place.Likelihood - most < Unlikely);
        return places.ConvertAll(place => place with { Likelihood = Math.Exp(place.Likelihood - most) });
    }

    private void AddRow(List<Place> places, double shape, double[] means, double ofShape)
    {
        var k = ShapeAt(shape);
        var scaleOverMean = LogScaleOverMean(k);
        var logSum = Math.Log(_logHours.Sum(hours => Math.Exp(k * (hours - _logMean))));
        var ofRow = (_breaks * Math.Log(k)) + ((k - 1) * (_sumOfLogs - (_breaks * _logMean))) - (shape * shape / 2) - ofShape;
        foreach (var mean in means)
        {
            var logScale = k * ((_values.LifeSpread * mean) + scaleOverMean);
            places.Add(new Place(mean, shape, k, scaleOverMean, ofRow - (_breaks * logScale) - Math.Exp(logSum - logScale) - (mean * mean / 2) - AtEdge(mean, means)));
        }
    }

    // The outermost points stand for half as wide a stretch as the others.
    private static double AtEdge(double place, double[] places) => place == places[0] || place == places[^1] ? Math.Log(2) : 0;

    private WearPoint ToPoint(Place place, double weight)
    {
        var logMean = _logMean + (_values.LifeSpread * place.Mean);
        return new WearPoint(Math.Exp(logMean), place.K, logMean + place.LogScaleOverMean, weight);
    }

    private double ShapeAt(double shape) => _values.Shape * Math.Exp(_values.ShapeSpread * shape);

    // The mean of a Weibull distribution is its scale · Γ(1 + 1/k).
    private static double LogScaleOverMean(double k) => -Math.Log(GammaFunction.Of(1 + (1 / k)));

    private static double[] Around(IEnumerable<double> likely, double most, int coarse, int fine)
    {
        var (places, step) = (likely.ToList(), 2 * most / (coarse - 1));
        return Steps(Math.Max(-most, places.Min() - step), Math.Min(most, places.Max() + step), fine);
    }

    private static double[] Steps(double first, double last, int count) =>
        [.. Enumerable.Range(0, count).Select(i => first + ((last - first) * i / (count - 1)))];
}
