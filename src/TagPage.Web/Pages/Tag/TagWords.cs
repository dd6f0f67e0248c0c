using System.Globalization;
using TagPage.Core.Forecast;
using TagPage.Core.Strings;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Tag;

/// <summary>The sentences of a racket's public page.</summary>
public static class TagWords
{
    /// <summary>What the page is about, in its title and, where there is no racket to show, in its heading.</summary>
    public static string Title(TagVisit visit) => visit.Answer switch
    {
        TagAnswer.Live => $"{Headline(visit.Racket!)} – racket {visit.Racket!.Number}",
        TagAnswer.Refused => "Too many wrong codes",
        TagAnswer.Retired => "This tag is no longer in use",
        TagAnswer.Unassigned => "This tag is not in use yet",
        TagAnswer.Mistyped => "Look again at the tag",
        _ => "No racket has this code",
    };

    /// <summary>The answer a player came for, in the largest letters.</summary>
    public static string Headline(TagView racket) => racket.State switch
    {
        RestringState.Good or RestringState.DueSoon => $"Restring {InWords.When(racket.DaysLeft!.Value)}",
        RestringState.Past => "Restring now",
        RestringState.NoStrings => "No strings in it",
        RestringState.NotStrungYet => "Not strung here yet",
        _ => "Nothing due",
    };

    public static string Date(TagView racket) => racket.State switch
    {
        RestringState.Good or RestringState.DueSoon => $"by {Shown.Day(racket.Due)}",
        RestringState.Past => $"it was due {InWords.When(racket.DaysLeft!.Value)}, {Shown.Day(racket.Due)}",
        RestringState.NoStrings => $"the last ones came out on {Shown.Day(racket.StringsEndedOn)}",
        RestringState.NotStrungYet => "this page begins with its first stringing",
        _ => "this racket is not in play at the moment",
    };

    /// <summary>The state in a word or two, to stand beside its mark.</summary>
    public static string State(RestringState state) => state switch
    {
        RestringState.Good => "Good",
        RestringState.DueSoon => "Due soon",
        RestringState.Past => "Past its date",
        RestringState.NoStrings => "No strings",
        RestringState.NotStrungYet => "New here",
        _ => "Not in play",
    };

    /// <summary>What the drawing of the strings says, or null where there is nothing left to say.</summary>
    public static string? Life(TagView racket) => racket.DecidedBy is { } decided
        ? $"{Left(racket)}, {PublicReason.Of(decided)}"
        : null;

    private static string Left(TagView racket) => racket.DaysLeft switch
    {
        > 1 and var days => $"{Sentence(InWords.Left(racket.LifeLeft))}: {days} days",
        1 => $"{Sentence(InWords.Left(racket.LifeLeft))}: 1 day",
        0 => "Today is the last day",
        _ => "None left",
    };

    public static string Label(TagView racket) => string.Join(" · ", new[]
    {
        $"Racket {racket.Number}",
        racket.TapeColour.Length > 0 ? $"{racket.TapeColour} tape" : "",
        EnglishNames.Of(racket.Sport),
    }.Where(part => part.Length > 0));

    public static string Named(string name, decimal gaugeMm) => $"{name}, {Gauge(gaugeMm)}\u00A0mm";

    /// <summary>"Heron 1.25 / Gannet 1.30": mains before crosses.</summary>
    public static string Strings(StringingRow row) => row.IsHybrid
        ? $"{row.Mains} {Gauge(row.MainsGaugeMm)} / {row.Crosses} {Gauge(row.CrossesGaugeMm)}"
        : $"{row.Mains} {Gauge(row.MainsGaugeMm)}";

    /// <summary>"52 / 50 lb": mains before crosses.</summary>
    public static string Tensions(StringingRow row) =>
        row.MainsTension == row.CrossesTension ? row.MainsAt.ToString() : $"{Shown.Number(row.MainsTension)} / {row.CrossesAt}";

    /// <summary>When, and how where that is out of the ordinary: two pieces without pre-stretch go without saying.</summary>
    public static string Strung(StringingRow row) =>
        Shown.Day(row.StrungOn)
        + (row.Pieces == 1 ? ", in one piece" : "")
        + (row.PreStretchPercent > 0 ? $", pre-stretched {row.PreStretchPercent} %" : "");

    public static string Reading(decimal reading, ReadingScale? scale) =>
        scale == ReadingScale.Hertz ? Measured(reading, scale) : $"{Measured(reading, scale)} on the shop’s gauge";

    public static string Measured(decimal reading, ReadingScale? scale) =>
        scale == ReadingScale.Hertz ? $"{Shown.Number(reading)} Hz" : Shown.Number(reading);

    /// <summary>What to do about a code that opened nothing.</summary>
    public static string Advice(TagAnswer answer) => answer switch
    {
        TagAnswer.Mistyped => "Look again at the tag: one character is different there.",
        TagAnswer.NotACode => "A code has eleven letters and digits, like 7K2M-9Q4T-XAV.",
        _ => "Compare each character with the tag.",
    };

    private static string Gauge(decimal mm) => mm.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
