using System.ComponentModel.DataAnnotations;
using TagPage.Records.Reminders;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shared;

/// <summary>What the answer form posts. All of it is text, so that what does not fit is said in the reader's language.</summary>
public sealed record AnswerInput
{
    public List<RacketInput> Rackets { get; init; } = [];

    /// <summary>One answer for all that have none of their own.</summary>
    public string? All { get; init; }

    public string? AllWeeks { get; init; } = UsualWeeks.ToString(System.Globalization.CultureInfo.InvariantCulture);

    public bool Stop { get; init; }

    /// <summary>Whether the form was shown with the reminders stopped: only then does an unticked box ask for them again.</summary>
    public bool WasStopped { get; init; }

    public sealed record RacketInput
    {
        public long RacketId { get; init; }
        public string? Answer { get; init; }
        public string? Strings { get; init; }
        public string? Tension { get; init; }
        [DataType(DataType.MultilineText)]
        public string? Note { get; init; }
        public string? Weeks { get; init; }
        public string? ElsewhereOn { get; init; }
    }

    /// <summary>False to stop the reminders, true to have them again, null to leave it.</summary>
    public bool? Reminders => Stop ? false : WasStopped ? true : null;

    public static AnswerInput Of(IEnumerable<ReminderRacket> rackets, bool reminders) => new()
    {
        Stop = !reminders,
        WasStopped = !reminders,
        Rackets = [.. rackets.Select(r => new RacketInput
        {
            RacketId = r.RacketId,
            Answer = r.Answer?.ToString(),
            Strings = r.WishStrings,
            Tension = r.WishTension,
            Note = r.WishNote,
            Weeks = (r.Weeks ?? UsualWeeks).ToString(System.Globalization.CultureInfo.InvariantCulture),
            ElsewhereOn = r.AnsweredElsewhereOn is { } day ? DayField.Of(day) : null,
        })],
    };

    private const int UsualWeeks = 4;
}
