using TagPage.Core.Forecast;
using TagPage.Core.Text;

namespace TagPage.Web.Words;

/// <summary>Why a racket has its restring-by date.</summary>
public static class ReasonWords
{
    /// <summary>The neutral words for what decided, the only ones a public page may show: nothing about habits.</summary>
    public static string Because(this Language language, LimitKind kind)
    {
        var words = language.Phrases.Life;
        return kind switch
        {
            LimitKind.Hours => words.BecauseOfHours,
            LimitKind.Tension => words.BecauseOfTension,
            LimitKind.Breakage => words.BecauseOfBreakage,
            LimitKind.OwnersDate => words.BecauseOfShop,
            LimitKind.TimesAWeek or LimitKind.EveryWeeks or LimitKind.Age => words.BecauseOfTime,
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a limit."),
        };
    }

    /// <summary>How a limit's day came about, with numbers. Tells the player's habits: for private pages only.</summary>
    public static string Why(this Language language, LimitDay limit) => limit switch
    {
        TimesAWeekLimit times => OfTimes(language, times),
        HoursLimit hours => OfHours(language, hours),
        TensionLimit tension => TensionWords.Of(language, tension),
        BreakageLimit breakage => BreakageWords.Of(language, breakage),
        EveryWeeksLimit weeks => OfWeeks(language, weeks),
        OwnersDateLimit { IsLeftOver: true } => language.Phrases.Reasons.ShopsDateOld,
        OwnersDateLimit => language.Phrases.Reasons.ShopsDate,
        AgeLimit age => language.Phrases.Reasons.Age.Fill(("days", language.Days(age.Interval!.Value))),
        _ => throw new ArgumentOutOfRangeException(nameof(limit), limit.Kind, "Has no words yet."),
    };

    /// <summary>Limits whose reasons are to be listed: what keeps several from having a day is said once.</summary>
    public static IEnumerable<LimitDay> Told(this Language language, RestringBy by) =>
        by.Limits.DistinctBy(limit => limit.Day is null ? language.Why(limit) : limit.Kind.ToString());

    /// <summary>The reason, and that it has no say where the racket's rule leaves it out.</summary>
    public static string WhyWithSay(this Language language, LimitDay limit) =>
        language.Why(limit) + (limit.Counts ? "" : language.Phrases.Time.Comma + language.Phrases.Reasons.NotCounting);

    private static string OfTimes(Language language, TimesAWeekLimit limit)
    {
        var words = language.Phrases.Reasons;
        var isOften = limit.TimesAWeek > TimesAWeekLimit.FewestAYear;
        var phrase = isOften ? words.TimesAWeek : Math.Round(limit.TimesAWeek, 1) == 1 ? words.Once : words.FewTimes;
        return phrase.Fill(
            ("times", isOften ? language.Number(limit.TimesAWeek, 1) : language.Count(language.Phrases.Time.Times, limit.TimesAWeek)),
            ("least", language.Number((double)TimesAWeekLimit.FewestAYear)),
            ("days", language.Days(limit.Interval!.Value)));
    }

    private static string OfHours(Language language, HoursLimit limit)
    {
        var words = language.Phrases.Reasons;
        if (limit.LifeHours is not { } life)
            return words.StringsUnknown;
        if (limit.Interval is not { } days)
            return limit.StandsStill ? words.StandsStill : words.NoHours;
        var phrase = limit.SoFar is not null ? words.HoursLogged : limit.IsHybrid ? words.HoursHybrid : words.Hours;
        var reason = phrase.Fill(
            ("life", language.Number(life, 1)), ("played", language.Number(limit.SoFar ?? 0, 1)),
            ("week", language.Number(limit.HoursAWeek)), ("days", language.Days(days)));
        return limit.HasPauses ? words.PausesLeftOut.Fill(("reason", reason)) : reason;
    }

    private static string OfWeeks(Language language, EveryWeeksLimit limit) =>
        language.Count(language.Phrases.Reasons.EveryWeeks, limit.Weeks).Fill(("days", language.Days(limit.Weeks * 7)));
}
