namespace TagPage.Core.Forecast;

/// <summary>
/// Which of the worked-out limits have a say. Where the player's rule cannot be worked out (hours without play,
/// "every N weeks" without a number, a fixed date that nobody set) whichever comes first stands in: its times-a-week
/// limit always has a day. Strings get no older than the largest age under any rule; only the owner's date goes beyond.
/// </summary>
internal static class CountingLimits
{
    public static IReadOnlyList<LimitDay> Mark(IEnumerable<LimitDay> limits, ForecastInput input)
    {
        var all = limits.ToList();
        var say = Say(all, input);
        return [.. all.Select(limit => limit with { Counts = say.Contains(limit.Kind) })];
    }

    private static LimitKind[] Say(List<LimitDay> all, ForecastInput input)
    {
        if (all.OfType<OwnersDateLimit>().Any(date => !date.IsLeftOver))
            return [LimitKind.OwnersDate];
        var named = Named(input.Rule ?? Start);
        return [.. all.Any(limit => named.Contains(limit.Kind) && IsWorkedOut(limit)) ? named : Named(Start), LimitKind.Age];
    }

    /// <summary>For a player without a rule; the same for everybody, so that a little more play moves a date a little.</summary>
    private const RestringRule Start = RestringRule.WhicheverFirst;

    private static bool IsWorkedOut(LimitDay limit) => limit.Day is not null || limit is HoursLimit { StandsStill: true };

    // A fixed date names nothing: once that date is set it has decided already.
    private static LimitKind[] Named(RestringRule rule) => rule switch
    {
        RestringRule.TimesAWeek => [LimitKind.TimesAWeek],
        RestringRule.Hours => [LimitKind.Hours],
        RestringRule.WhicheverFirst => [LimitKind.TimesAWeek, LimitKind.Hours, LimitKind.Tension, LimitKind.Breakage],
        RestringRule.EveryWeeks => [LimitKind.EveryWeeks],
        _ => [],
    };
}
