namespace TagPage.Core.Forecast;

/// <summary>
/// Which of the worked-out limits have a say. Where the player's rule yields no day (hours without play,
/// "every N weeks" without a number, a fixed date that nobody set) the start rule stands in: its times-a-week
/// limit always has one.
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
        var named = Named(input.Rule);
        return all.Any(limit => named.Contains(limit.Kind) && limit.Day is not null)
            ? named
            : Named(StartRule.For(input.Play, input.Bed));
    }

    // A fixed date names nothing: once that date is set it has decided already.
    private static LimitKind[] Named(RestringRule? rule) => rule switch
    {
        RestringRule.TimesAWeek => [LimitKind.TimesAWeek],
        RestringRule.Hours => [LimitKind.Hours],
        RestringRule.WhicheverFirst => [LimitKind.TimesAWeek, LimitKind.Hours, LimitKind.Tension, LimitKind.Breakage],
        RestringRule.EveryWeeks => [LimitKind.EveryWeeks],
        _ => [],
    };
}
