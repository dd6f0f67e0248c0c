using TagPage.Core.Forecast.Learning;

namespace TagPage.Core.Forecast;

/// <summary>
/// The first whole day on which the expected loss of tension reaches the material's threshold. Has no day without play,
/// without known strings, or where that takes more than <see cref="MostDaysAhead"/> days.
/// </summary>
public sealed record TensionLimit : LimitDay
{
    /// <summary>Two years: what takes longer does not count.</summary>
    public const int MostDaysAhead = 730;

    private TensionLimit(DateOnly? day, LossCurve? curve, HoursPlayed played) : base(LimitKind.Tension, day, played.Strung) =>
        (Curve, HoursAWeek) = (curve, played.HoursAWeek);

    /// <summary>How the strings lose tension; null when they are not known or not played.</summary>
    public LossCurve? Curve { get; }

    /// <summary>This racket's hours of play a week.</summary>
    public double HoursAWeek { get; }

    /// <summary>Whether the threshold is more than two years away.</summary>
    public bool TakesOverTwoYears => Curve is not null && Day is null;

    internal static TensionLimit Of(ForecastInput input, DateOnly strung, DateOnly today, StartingValues values)
    {
        var played = HoursPlayed.Of(input, strung, today);
        if (input.Bed is not { } bed || played.HoursAWeek <= 0)
            return new TensionLimit(null, null, played);
        var typical = values.Tension.Of(bed.Mains.Material);
        var model = LossModel.Of(typical, values.Tension.Spread, input.Learned.Beds);
        var curve = new LossCurve(model, played, typical.Threshold);
        return new TensionLimit(curve.Reaches(), curve, played);
    }
}
