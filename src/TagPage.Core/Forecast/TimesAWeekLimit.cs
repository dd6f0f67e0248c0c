namespace TagPage.Core.Forecast;

/// <summary>
/// As many restrings a year as times played a week, at least two a year (common practice, no source):
/// strung + ⌊365 / max(2, times a week)⌋ days. Always has a day.
/// </summary>
public sealed record TimesAWeekLimit : LimitDay
{
    /// <summary>Fewest restrings a year, however little a racket is played.</summary>
    public const int FewestAYear = 2;

    private TimesAWeekLimit(DateOnly day, DateOnly strung, double timesAWeek) : base(LimitKind.TimesAWeek, day, strung) =>
        TimesAWeek = timesAWeek;

    /// <summary>This racket's times a week.</summary>
    public double TimesAWeek { get; }

    internal static TimesAWeekLimit Of(ForecastInput input, DateOnly strung)
    {
        var times = PlayedTimes.AWeek(input.Play, input.Share);
        var days = Days.Whole(365 / Math.Max(FewestAYear, times));
        return new TimesAWeekLimit(Days.After(strung, days), strung, times);
    }
}
