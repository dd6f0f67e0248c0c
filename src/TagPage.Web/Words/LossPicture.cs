using TagPage.Core.Forecast;

namespace TagPage.Web.Words;

/// <summary>What the picture of a bed's tension shows.</summary>
/// <param name="Curve">Expected loss and its range.</param>
/// <param name="Today">In the shop's time zone.</param>
/// <param name="Due">The day the threshold is reached; null when that is too far away.</param>
/// <param name="Readings">Losses measured on this bed, in per cent, by day.</param>
public sealed record LossPicture(LossCurve Curve, DateOnly Today, DateOnly? Due, IReadOnlyList<(DateOnly Day, double Loss)> Readings)
{
    private const int MostRows = 8;

    /// <summary>Losses that were measured and not believed; drawn hollow.</summary>
    public IReadOnlyList<(DateOnly Day, double Loss)> Doubtful { get; init; } = [];

    /// <summary>The same numbers for a table: a few days from the stringing to the end of the picture, today and the due day among them.</summary>
    public IReadOnlyList<LossPoint> Rows =>
    [
        .. Curve.Points(new LossFrame(this).LastDay, MostRows).Select(p => p.Day)
            .Append(Today).Concat(Due is { } due ? [due] : []).Concat(Readings.Select(r => r.Day))
            .Where(day => day >= Curve.Strung).Distinct().Order().Select(Curve.On),
    ];

    /// <summary>The loss measured on a day; null without a reading.</summary>
    public double? MeasuredOn(DateOnly day) => Readings.Where(r => r.Day == day).Select(r => (double?)r.Loss).LastOrDefault();
}

/// <summary>The picture's labels.</summary>
/// <param name="Says">All of it, for those who cannot see it.</param>
/// <param name="Today">At today's line.</param>
/// <param name="Due">At the due day's line.</param>
/// <param name="Threshold">At the threshold.</param>
public sealed record LossPictureWords(string Says, string Today, string Due, string Threshold);
