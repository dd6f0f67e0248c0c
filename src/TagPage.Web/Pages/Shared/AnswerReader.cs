using System.Globalization;
using TagPage.Core.Text;
using TagPage.Records.Reminders;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shared;

/// <summary>Reads the answer form and says, field by field and in the reader's language, what does not fit.</summary>
public sealed class AnswerReader(Language language, IReadOnlyList<ReminderRacket> rackets, DateOnly today)
{
    private readonly List<(string Field, string Sentence)> _faults = [];
    private readonly ReminderPhrases _say = language.Phrases.Reminder;

    /// <summary>Field names as within the form's input, and the sentences to show beside them.</summary>
    public IReadOnlyList<(string Field, string Sentence)> Faults => _faults;

    /// <summary>The answers that were chosen; those of rackets that are not the reminder's are dropped.</summary>
    public IReadOnlyList<RacketAnswer> Read(AnswerInput input)
    {
        var answers = new List<RacketAnswer>();
        var all = ForAll(input);
        var weeks = all == AnswerKind.NotYet ? Weeks(input.AllWeeks, "All") : null;
        for (var i = 0; i < input.Rackets.Count; i++)
        {
            if (rackets.FirstOrDefault(r => r.RacketId == input.Rackets[i].RacketId) is not { } racket)
                continue;
            var own = Kind(input.Rackets[i].Answer);
            if (all is { } together && racket.IsOpen && (own is null || (own == racket.Answer && NeedsOnlyAChoice(own))))
                answers.Add(new RacketAnswer(racket.RacketId, together) { Weeks = weeks });
            else if (own is { } kind)
                answers.Add(Read(input.Rackets[i], kind, racket, $"Rackets[{i}]."));
        }
        if (answers.Count == 0 && input.Reminders is null)
            _faults.Add((input.Rackets.Count > 0 ? "Rackets[0].Answer" : "", _say.AnswerMissing));
        return answers;
    }

    private static AnswerKind? Kind(string? typed) => Enum.TryParse<AnswerKind>(typed, out var kind) && Enum.IsDefined(kind) ? kind : null;

    // The rest is asked racket by racket.
    private static AnswerKind? ForAll(AnswerInput input) => Kind(input.All) is { } all && NeedsOnlyAChoice(all) ? all : null;

    private static bool NeedsOnlyAChoice(AnswerKind? kind) => kind is AnswerKind.Same or AnswerKind.NotYet;

    private RacketAnswer Read(AnswerInput.RacketInput input, AnswerKind kind, ReminderRacket racket, string field)
    {
        var answer = new RacketAnswer(racket.RacketId, kind);
        return kind switch
        {
            AnswerKind.Different => Different(answer, input, field),
            AnswerKind.NotYet => answer with { Weeks = Weeks(input.Weeks, field) },
            AnswerKind.Elsewhere => answer with { ElsewhereOn = Day(input.ElsewhereOn, racket, field) },
            _ => answer,
        };
    }

    private RacketAnswer Different(RacketAnswer answer, AnswerInput.RacketInput input, string field)
    {
        var wish = answer with { Strings = input.Strings ?? "", Tension = input.Tension ?? "", Note = input.Note ?? "" };
        if (wish.AskedWords.Length == 0)
            _faults.Add((field + nameof(input.Strings), _say.WishMissing));
        Limit(wish.Strings, RacketAnswer.LongestStrings, field + nameof(input.Strings));
        Limit(wish.Tension, RacketAnswer.LongestTension, field + nameof(input.Tension));
        Limit(wish.Note, RacketAnswer.LongestNote, field + nameof(input.Note));
        return wish;
    }

    private void Limit(string text, int most, string field)
    {
        if (text.Length > most)
            _faults.Add((field, _say.TextTooLong.Fill(("most", $"{most}"), ("n", $"{text.Length}"))));
    }

    private int? Weeks(string? typed, string field)
    {
        if (int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var weeks) && weeks is >= 1 and <= RacketAnswer.MostWeeks)
            return weeks;
        _faults.Add((field + "Weeks", _say.WeeksUnread.Fill(("least", "1"), ("most", $"{RacketAnswer.MostWeeks}"))));
        return null;
    }

    /// <summary>After the strings that are in, and not to come.</summary>
    private DateOnly? Day(string? typed, ReminderRacket racket, string field)
    {
        if (DayField.Read(typed) is { } day
            && day <= today && !(day <= racket.StrungHereOn))
            return day;
        _faults.Add((field + "ElsewhereOn", _say.DayUnread));
        return null;
    }
}
