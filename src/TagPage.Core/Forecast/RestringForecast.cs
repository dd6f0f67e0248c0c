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
        return Decide(CountingLimits.Mark(Limits(input, strung, values), input), strung, today, values);
    }

    private static IEnumerable<LimitDay> Limits(ForecastInput input, DateOnly strung, StartingValues values)
    {
        LimitDay?[] limits =
        [
            TimesAWeekLimit.Of(input, strung),
            HoursLimit.Of(input, strung, values),
            EveryWeeksLimit.Of(input, strung),
            OwnersDateLimit.Of(input, strung),
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
            State = StateOn(today, strung, due, values.DueSoon),
            Due = due,
            DecidedBy = first.Kind,
            Limits = limits,
            DaysLeft = due.DayNumber - today.DayNumber,
            LifeLeft = LifeLeft(today, strung, due),
        };
    }

    private static RestringState StateOn(DateOnly today, DateOnly strung, DateOnly due, DueSoonValues soon)
    {
        var left = due.DayNumber - today.DayNumber;
        var interval = due.DayNumber - strung.DayNumber;
        if (left < 0)
            return RestringState.Past;
        return left <= soon.Days && left * soon.LastOneIn <= interval
            ? RestringState.DueSoon
            : RestringState.Good;
    }

    private static double LifeLeft(DateOnly today, DateOnly strung, DateOnly due)
    {
        if (today <= strung)
            return 1;
        return today >= due ? 0 : (double)(due.DayNumber - today.DayNumber) / (due.DayNumber - strung.DayNumber);
    }
}
