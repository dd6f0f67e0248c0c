using TagPage.Core.Forecast;
using TagPage.Core.Text;

namespace TagPage.Web.Words;

/// <summary>Spans of time and what is left of them, said as a person would.</summary>
public static class WhenWords
{
    /// <summary>Where a day lies from today: "today", "tomorrow", "in 12 days", "in 3 weeks", "9 days ago".</summary>
    /// <param name="language">The language to say it in.</param>
    /// <param name="daysLeft">Days from today, negative for the past.</param>
    public static string When(this Language language, int daysLeft)
    {
        var words = language.Phrases.Time;
        return daysLeft switch
        {
            0 => words.Today,
            1 => words.Tomorrow,
            -1 => words.Yesterday,
            > 0 => Far(language, RoundedSpan.Of(daysLeft), words.InDays, words.InWeeks, words.InMonths, words.InYears),
            _ => Far(language, RoundedSpan.Of(-(long)daysLeft), words.DaysAgo, words.WeeksAgo, words.MonthsAgo, words.YearsAgo),
        };
    }

    /// <summary>"1 day", "28 days", "10 years or more".</summary>
    public static string Days(this Language language, int days) =>
        days >= LimitDay.MostDays ? language.Phrases.Time.TenYears : language.Count(language.Phrases.Time.Days, days);

    /// <summary>"about a third left": what is left of the string life.</summary>
    public static string Left(this Language language, LifeShare share)
    {
        var words = language.Phrases.Life;
        return share switch
        {
            LifeShare.All => words.All,
            LifeShare.NearlyAll => words.NearlyAll,
            LifeShare.ThreeQuarters => words.ThreeQuarters,
            LifeShare.TwoThirds => words.TwoThirds,
            LifeShare.Half => words.Half,
            LifeShare.Third => words.Third,
            LifeShare.Quarter => words.Quarter,
            LifeShare.Tenth => words.Tenth,
            LifeShare.HardlyAny => words.HardlyAny,
            _ => words.None,
        };
    }

    private static string Far(Language language, RoundedSpan span, string days, string weeks, string months, string years) => (span.Unit switch
    {
        SpanUnit.Days => days,
        SpanUnit.Weeks => weeks,
        SpanUnit.Months => months,
        _ => years,
    }).Fill(("n", language.Number((double)span.Count)));
}
