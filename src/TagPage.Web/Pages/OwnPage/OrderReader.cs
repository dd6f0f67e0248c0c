using System.Globalization;
using TagPage.Core.Text;
using TagPage.Records.Jobs;
using TagPage.Records.Reminders;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Reads what a client asks for, and says in the reader's language what does not fit.</summary>
public sealed class OrderReader(Language language, DateOnly today)
{
    private readonly List<(string Field, string Sentence)> _faults = [];
    private readonly OwnPageOrderPhrases _say = OwnPageWords.Of(language).Order;
    private readonly ReminderPhrases _words = language.Phrases.Reminder;

    public IReadOnlyList<(string Field, string Sentence)> Faults => _faults;

    /// <param name="input">As typed.</param>
    /// <param name="hasStops">The form offered the shop's stops.</param>
    public JobRequest Read(OrderInput input, bool hasStops)
    {
        var by = Day(nameof(input.By), input.By);
        var needed = Day(nameof(input.NeededBy), input.NeededBy);
        if (needed < by)
            _faults.Add((nameof(input.NeededBy), _say.NeededTooEarly));
        Limit(nameof(input.Where), input.Where, OrderInput.LongestWhere);
        var request = new JobRequest(AskedIn.OwnPage, Words(input)) { DropOffBy = by, NeededBy = needed };
        return !hasStops ? request with { DropOffWhere = input.Where ?? "" }
            : string.IsNullOrEmpty(input.Where) ? request
            // What is no number is no stop either, and the store says so.
            : request with { StopId = long.TryParse(input.Where, NumberStyles.None, CultureInfo.InvariantCulture, out var stop) ? stop : 0 };
    }

    private string Words(OrderInput input)
    {
        switch (input.Kind)
        {
            case nameof(AnswerKind.Same):
                return "";
            case nameof(AnswerKind.Different):
                Limit(nameof(input.Strings), input.Strings, RacketAnswer.LongestStrings);
                Limit(nameof(input.Tension), input.Tension, RacketAnswer.LongestTension);
                Limit(nameof(input.Note), input.Note, RacketAnswer.LongestNote);
                var answer = new RacketAnswer(0, AnswerKind.Different) { Strings = input.Strings ?? "", Tension = input.Tension ?? "", Note = input.Note ?? "" };
                if (answer.AskedWords.Length == 0)
                    _faults.Add((nameof(input.Strings), _words.WishMissing));
                return answer.AskedWords;
            default:
                _faults.Add((nameof(input.Kind), _say.KindMissing));
                return "";
        }
    }

    private DateOnly? Day(string field, string? typed)
    {
        if (typed is null)
            return null;
        if (DayField.Read(typed) is { } day && day >= today && day <= today.AddYears(1))
            return day;
        _faults.Add((field, _say.DayUnread));
        return null;
    }

    private void Limit(string field, string? text, int most)
    {
        if (text?.Length > most)
            _faults.Add((field, _words.TextTooLong.Fill(("most", $"{most}"), ("n", $"{text.Length}"))));
    }
}
