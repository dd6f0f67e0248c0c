using TagPage.Core.Forecast.Learning;

namespace TagPage.Core.Forecast;

/// <summary>The loss of tension of one bed over the days since it was strung.</summary>
/// <param name="Model">Typical or learned.</param>
/// <param name="Played">Hours by day.</param>
/// <param name="Threshold">Per cent at which to restring.</param>
public sealed record LossCurve(LossModel Model, HoursPlayed Played, double Threshold)
{
    /// <summary>Per cent. The model was made for strings in use: beyond this it only tells that more than half is gone.</summary>
    public const double MostSensible = 50;

    private const double Slack = 1e-9;

    /// <summary>The day the strings went in.</summary>
    public DateOnly Strung => Played.Strung;

    /// <summary>The loss on one day.</summary>
    public LossPoint On(DateOnly day)
    {
        var (days, hours) = At(day.DayNumber - Strung.DayNumber);
        var (expected, half) = (Model.Expected(days, hours), Model.HalfRange(days, hours));
        return new LossPoint(day, expected, Math.Max(0, expected - half), expected + half);
    }

    /// <summary>The first day on which the expected loss reaches the threshold; null within two years.</summary>
    public DateOnly? Reaches() => First((days, hours) => Model.Expected(days, hours));

    /// <summary>The days between which 80 % would reach it; null for an end that is more than two years away.</summary>
    public (DateOnly? Early, DateOnly? Late) Range() => (
        First((days, hours) => Model.Expected(days, hours) + Model.HalfRange(days, hours)),
        First((days, hours) => Model.Expected(days, hours) - Model.HalfRange(days, hours)));

    /// <summary>Points from the day of stringing to the last day, both included.</summary>
    /// <param name="lastDay">After the day of stringing.</param>
    /// <param name="most">How many points at most, 2 or more.</param>
    public IReadOnlyList<LossPoint> Points(DateOnly lastDay, int most)
    {
        var days = Math.Max(1, lastDay.DayNumber - Strung.DayNumber);
        var steps = Math.Min(days, most - 1);
        return [.. Enumerable.Range(0, steps + 1).Select(i => On(Strung.AddDays((int)Math.Round((double)i * days / steps))))];
    }

    private DateOnly? First(Func<double, double, double> loss)
    {
        for (var day = 0; day <= TensionLimit.MostDaysAhead; day++)
        {
            var (days, hours) = At(day);
            if (loss(days, hours) >= Threshold - Slack)
                return Days.After(Strung, day);
        }
        return null;
    }

    private (double Days, double Hours) At(int days) => (Math.Max(0, days), Played.By(Days.After(Strung, Math.Max(0, days))));
}
