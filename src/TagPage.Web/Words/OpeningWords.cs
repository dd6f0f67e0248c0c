using TagPage.Core.Text;
using TagPage.Records.Shop;

namespace TagPage.Web.Words;

/// <summary>When the shop is open, in the reader's language; notes stay as the owner wrote them.</summary>
public static class OpeningWords
{
    /// <summary>Closed days are told so long before.</summary>
    private const int DaysAhead = 28;

    /// <summary>Weekdays in a row with the same times on one line, from Monday: "Tuesday–Friday: 10:00–18:00".</summary>
    public static IEnumerable<string> Week(Language language, Opening opening)
    {
        if (opening.Week.Count == 0)
            yield break;
        var runs = Runs(opening).ToList();
        foreach (var run in runs.Where(run => run.Times.Length > 0))
            yield return Line(language, [run], run.Times);
        if (runs.Where(run => run.Times.Length == 0).ToList() is { Count: > 0 } closed)
            yield return Line(language, closed, language.Phrases.Home.Closed);
    }

    /// <summary>Those that are not over and begin within four weeks, each with its note.</summary>
    public static IEnumerable<(string Words, string Note)> Closed(Language language, Opening opening, DateOnly today) =>
        from days in opening.Closed
        where days.ToOn >= today && days.FromOn <= today.AddDays(DaysAhead)
        select (Closed(language, days), days.Note);

    public static string Closed(Language language, ClosedDays days) => days.FromOn == days.ToOn
        ? language.Phrases.Home.ClosedDay.Fill(("day", language.DayInText(days.FromOn)))
        : language.Phrases.Home.ClosedDays.Fill(("from", language.DayInText(days.FromOn)), ("to", language.DayInText(days.ToOn)));

    /// <summary>All of it as lines of an email.</summary>
    public static string Lines(Language language, ShopDetails shop, DateOnly today) => string.Join('\n',
        [
            .. Week(language, shop.Opening),
            .. Closed(language, shop.Opening, today).Select(closed => closed.Note.Length > 0 ? $"{closed.Words}{language.Colon}{closed.Note}" : closed.Words),
            .. shop.OpeningHours.Length > 0 ? [shop.OpeningHours] : Array.Empty<string>(),
        ]);

    private sealed record Run(int First, int Last, string Times);

    private static IEnumerable<Run> Runs(Opening opening)
    {
        Run? run = null;
        for (var day = 1; day <= 7; day++)
        {
            var times = OpeningTimes.Write(opening.On(day));
            if (run?.Times == times)
            {
                run = run with { Last = day };
                continue;
            }
            if (run is not null)
                yield return run;
            run = new Run(day, day, times);
        }
        yield return run!;
    }

    private static string Line(Language language, IEnumerable<Run> runs, string what) =>
        language.Sentence(string.Join(language.Phrases.Time.Comma, runs.Select(run => Days(language, run)))) + language.Colon + what;

    private static string Days(Language language, Run run) =>
        run.First == run.Last ? language.Weekday(run.First) : $"{language.Weekday(run.First)}–{language.Weekday(run.Last)}";
}
