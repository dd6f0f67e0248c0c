using TagPage.Core.Rackets;

namespace TagPage.Core.Forecast;

/// <summary>
/// Works out the restring-by date: each limit has its own day, the rule says which of them count,
/// the earliest counting one decides, and the owner's own date overrules them all.
/// </summary>
public static class RestringForecast
{
    /// <summary>The forecast as of a calendar day in the shop's time zone. Never throws for odd numbers.</summary>
    public static RestringBy Work(ForecastInput input, DateOnly today, StartingValues values)
    {
        if (input.Racket is not (RacketState.InTurn or RacketState.Spare))
            return new RestringBy { State = RestringState.NotInPlay };
        if (input.BedEndedOn is not null)
            return new RestringBy { State = RestringState.NoStrings };
        if (input.StrungOn is not { } strung)
            return new RestringBy { State = RestringState.NotStrungYet };
        return Decide(CountingLimits.Mark(Limits(input, strung, today, values), input), strung, today, values)
            with
        { PlayIsPaused = input.Pauses.Any(pause => pause.IsOpenOn(today)) };
    }

    private static IEnumerable<LimitDay> Limits(ForecastInput input, DateOnly strung, DateOnly today, StartingValues values)
    {
        LimitDay?[] limits =
        [
            TimesAWeekLimit.Of(input, strung),
            HoursLimit.Of(input, strung, today, values),
            TensionLimit.Of(input, strung, today, values),
            BreakageLimit.Of(input, strung, today, values),
            EveryWeeksLimit.Of(input, strung),
            OwnersDateLimit.Of(input, strung),
            AgeLimit.Of(strung, values),
        ];
        return limits.OfType<LimitDay>();
    }

    private static RestringBy Decide(
        IReadOnlyList<LimitDay> limits, DateOnly strung, DateOnly today, StartingValues values)
    {
        var first = limits.Where(limit => limit is { Counts: true, Day: not null }).MinBy(limit => limit.Day)!;
        var due = first.Day!.Value;
        return new RestringBy
        {
            State = StateOn(today, due, SoonOn(strung, due, values.DueSoon)),
            Due = due,
            DecidedBy = first.Kind,
            SoonOn = SoonOn(strung, due, values.DueSoon),
            Limits = limits,
            DaysLeft = due.DayNumber - today.DayNumber,
            LifeLeft = LifeLeft(today, strung, due),
        };
    }

    private static DateOnly SoonOn(DateOnly strung, DateOnly due, DueSoonValues soon)
    {
        var interval = Math.Max(0, due.DayNumber - strung.DayNumber);
        return due.AddDays(-Math.Min(soon.Days, interval / soon.LastOneIn));
    }

    private static RestringState StateOn(DateOnly today, DateOnly due, DateOnly soonOn)
    {
        if (today > due)
            return RestringState.Past;
        return today >= soonOn ? RestringState.DueSoon : RestringState.Good;
    }

    private static double LifeLeft(DateOnly today, DateOnly strung, DateOnly due)
    {
        if (today <= strung)
            return 1;
        return today >= due ? 0 : (double)(due.DayNumber - today.DayNumber) / (due.DayNumber - strung.DayNumber);
    }
}
