using TagPage.Core.Forecast;
using TagPage.Core.Strings;
using TagPage.Core.Text;
using TagPage.Core.Units;
using TagPage.Records.Tags;

namespace TagPage.Web.Words;

/// <summary>The sentences of a racket's public page, in the visitor's language.</summary>
public sealed class TagWords(Language language)
{
    private const string SampleCode = "7K2M-9Q4T-XAV";

    private readonly TagPhrases _words = language.Phrases.Tag;

    public static TagWords Of(HttpContext context) => new(PageLanguage.Of(context).Language);

    /// <summary>What the page is about, in its title and, where there is no racket to show, in its heading.</summary>
    public string Title(TagVisit visit) => visit.Answer switch
    {
        TagAnswer.Live => $"{Headline(visit.Racket!)} – {Number(language.Phrases.Trade.RacketInText, visit.Racket!)}",
        TagAnswer.Refused => _words.Refused,
        TagAnswer.Retired => _words.Retired,
        TagAnswer.Unassigned => _words.Unassigned,
        TagAnswer.Mistyped => language.Phrases.Code.MistypedHeading,
        _ => language.Phrases.Code.UnknownHeading,
    };

    /// <summary>The answer a player came for, in the largest letters.</summary>
    public string Headline(TagView racket) => racket.State switch
    {
        RestringState.Good or RestringState.DueSoon => language.Sentence(_words.Headline.Fill(("when", When(racket)))),
        RestringState.Past => _words.Past,
        RestringState.NoStrings => _words.NoStrings,
        RestringState.NotStrungYet => _words.NotStrungYet,
        _ => _words.NothingDue,
    };

    public string Date(TagView racket) => racket.State switch
    {
        RestringState.Good or RestringState.DueSoon => _words.By.Fill(("day", language.DayInText(racket.Due!.Value))),
        RestringState.Past => _words.WasDue.Fill(("when", When(racket)), ("day", language.DayInText(racket.Due!.Value))),
        RestringState.NoStrings => _words.CameOut.Fill(("day", language.DayInText(racket.StringsEndedOn!.Value))),
        RestringState.NotStrungYet => _words.Begins,
        _ => _words.NotInPlay,
    };

    /// <summary>The state in a word or two, to stand beside its mark.</summary>
    public string State(RestringState state) => state switch
    {
        RestringState.Good => _words.StateGood,
        RestringState.DueSoon => _words.StateDueSoon,
        RestringState.Past => _words.StatePast,
        RestringState.NoStrings => _words.StateNoStrings,
        RestringState.NotStrungYet => _words.StateNew,
        _ => _words.StateNotInPlay,
    };

    /// <summary>What the drawing of the strings says, or null where there is nothing left to say.</summary>
    public string? Life(TagView racket) => racket.DecidedBy is { } decided
        ? language.Sentence(Left(racket.DaysLeft!.Value).Fill(
            ("left", language.Left(LifeShares.Of(racket.LifeLeft))),
            ("days", language.Days(racket.DaysLeft.Value)),
            ("reason", language.Because(decided))))
        : null;

    /// <summary>What the drawing of the tension says.</summary>
    public string Loss(LossPicture picture)
    {
        var (expected, limit) = (picture.Curve.On(picture.Today).Expected, language.Number(picture.Curve.Threshold, 0));
        if (expected > LossCurve.MostSensible)
            return _words.LossHalf;
        var phrase = picture.Due is not { } day ? _words.LossSlow
            : day < picture.Today ? _words.LossPast
            : day == picture.Today ? _words.LossToday
            : _words.Loss;
        return phrase.Fill(("now", language.Number(expected, 0)), ("limit", limit), ("day", language.DayInText(picture.Due ?? picture.Today)));
    }

    /// <summary>What the red line in it marks.</summary>
    public string LossLine(LossPicture picture) => _words.LossLine.Fill(("limit", language.Number(picture.Curve.Threshold, 0)));

    public string Label(TagView racket) => string.Join(" · ", new[]
    {
        Number(language.Phrases.Trade.Racket, racket),
        racket.TapeColour.Length > 0 ? _words.Tape.Fill(("colour", language.Colour(racket.TapeColour))) : "",
        language.Of(racket.Sport),
    }.Where(part => part.Length > 0));

    /// <summary>What a calendar shows for the day.</summary>
    public string CalendarEntry(TagView racket) =>
        Number(_words.CalendarSummary, racket) + (racket.TapeColour.Length > 0 ? $" ({language.Colour(racket.TapeColour)})" : "");

    public string Named(string name, decimal gaugeMm) => name + language.Phrases.Time.Comma + language.Gauge(gaugeMm) + "\u00A0mm";

    /// <summary>"Heron 1.25 / Gannet 1.30": mains before crosses.</summary>
    public string Strings(StringingRow row) => row.IsHybrid
        ? $"{language.StringName(row.Mains, row.MainsGaugeMm)} / {language.StringName(row.Crosses, row.CrossesGaugeMm)}"
        : language.StringName(row.Mains, row.MainsGaugeMm);

    public string Tension(Tension tension) => language.Of(tension);

    /// <summary>"52 / 50 lb": mains before crosses.</summary>
    public string Tensions(StringingRow row) => language.Tensions(row.MainsTension, row.CrossesTension, row.TensionUnit);

    public string Day(DateOnly day) => language.Day(day);

    public string DayInText(DateOnly day) => language.DayInText(day);

    /// <summary>When, and how where that is out of the ordinary: two pieces without pre-stretch go without saying.</summary>
    public string Strung(StringingRow row) => string.Join(language.Phrases.Time.Comma, new[]
    {
        language.Day(row.StrungOn),
        row.Pieces == 1 ? _words.OnePiece : "",
        Formats.PreStretch(row.MainsPreStretch, row.CrossesPreStretch) is { } stretched ? _words.PreStretched.Fill(("percent", stretched)) : "",
    }.Where(part => part.Length > 0));

    public string Reading(decimal reading, ReadingScale? scale) => _words.RightAfter.Fill(("reading",
        scale == ReadingScale.Hertz ? Measured(reading, scale) : _words.OnGauge.Fill(("reading", Measured(reading, scale)))));

    public string Measured(decimal reading, ReadingScale? scale) =>
        scale == ReadingScale.Hertz ? $"{language.Number(reading)} Hz" : language.Number(reading);

    public string Older(int stringings) => language.Count(_words.Earlier, stringings);

    /// <summary>What to do about a code that opened nothing.</summary>
    public string Advice(TagAnswer answer) => answer switch
    {
        TagAnswer.Mistyped => language.Phrases.Code.Mistyped,
        TagAnswer.NotACode => language.Phrases.Code.NotACode.Fill(("example", SampleCode)),
        _ => language.Phrases.Code.Unknown,
    };

    private string When(TagView racket) => language.When(racket.DaysLeft!.Value);

    private string Left(int daysLeft) => daysLeft switch
    {
        > 0 => _words.Life,
        0 => _words.LastDay,
        _ => _words.Used,
    };

    private static string Number(string phrase, TagView racket) => phrase.Fill(("number", $"{racket.Number}"));
}
