namespace TagPage.Core.Forecast;

/// <summary>
/// As many restrings a year as times played a week, at least two a year (common practice, no source):
/// strung + ⌊365 / max(2, times a week)⌋ days. Always has a day. Another racket that leaves play moves it to no day before.
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
        foreach (var earlier in input.EarlierShares.Where(earlier => earlier.Until > strung))
            if (At(input, strung, earlier.Share) is var before && before.Day <= earlier.Until)
                return before;
        var now = At(input, strung, input.Share);
        var since = input.EarlierShares.Count > 0 ? input.EarlierShares[^1].Until : strung;
        return now.Day < since ? new TimesAWeekLimit(since, strung, now.TimesAWeek) : now;
    }

    private static TimesAWeekLimit At(ForecastInput input, DateOnly strung, double share)
    {
        var times = PlayedTimes.AWeek(input.Play, share);
        return new TimesAWeekLimit(Days.After(strung, Days.Whole(365 / Math.Max(FewestAYear, times))), strung, times);
    }
}
