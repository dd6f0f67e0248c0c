using TagPage.Core.Jobs;
using TagPage.Core.Rackets;
using TagPage.Core.Units;
using TagPage.Records.DueDates;

namespace TagPage.Records.Reminders;

/// <summary>A racket of a reminder: when it is due and why, what was answered, and whether that can still be changed.</summary>
public sealed record ReminderRacket : ForecastRow
{
    public int Number { get; init; }
    public string Frame { get; init; } = "";
    public string TapeColour { get; init; } = "";
    public string Player { get; init; } = "";
    public long ClientId { get; init; }

    /// <summary>The strings that were put in here last.</summary>
    public string? Mains { get; init; }
    public decimal? LastMainsGaugeMm { get; init; }
    public string? Crosses { get; init; }
    public decimal? LastCrossesGaugeMm { get; init; }
    public DateOnly? StrungHereOn { get; init; }

    /// <summary>Of the job that "the same again" would repeat; the price only where the client pays it.</summary>
    public decimal? MainsTension { get; init; }
    public decimal? CrossesTension { get; init; }
    public TensionUnit TensionUnit { get; init; }
    public long? PriceMinor { get; init; }

    public AnswerKind? Answer { get; init; }
    public DateOnly? AnsweredElsewhereOn { get; init; }
    public int? Weeks { get; init; }
    public string WishStrings { get; init; } = "";
    public string WishTension { get; init; } = "";
    public string WishNote { get; init; } = "";
    public RacketState? StateBefore { get; init; }
    public DateOnly? ElsewhereBefore { get; init; }

    /// <summary>As it stands at the racket, from whichever reminder.</summary>
    public DateOnly? ElsewhereNow { get; init; }
    public DateOnly? NotBefore { get; init; }

    /// <summary>The job that a yes made; it stays with the reminder whatever is answered later.</summary>
    public long? JobId { get; init; }

    /// <summary>Of that job, while the answer is a yes or nothing.</summary>
    public JobState? JobState { get; init; }
    public long? Ticket { get; init; }

    /// <summary>A job of this racket on the bench that did not come from this reminder.</summary>
    public bool HasOtherJob { get; init; }

    /// <summary>When the reminder was made.</summary>
    public DateTimeOffset MadeAt { get; init; }

    /// <summary>It was strung here on the reminder's day or later, by whatever job.</summary>
    public bool IsStrungSince { get; init; }

    public bool IsOnMachine => JobState is Core.Jobs.JobState.OnMachine;

    /// <summary>Whether an answer can be given or changed.</summary>
    public bool IsOpen => !IsOnMachine && !IsStrungSince && !HasOtherJob && JobState is not (Core.Jobs.JobState.Strung or Core.Jobs.JobState.Collected);

    /// <summary>The answer as it is on file, or null.</summary>
    public RacketAnswer? Given => Answer is { } kind
        ? new RacketAnswer(RacketId, kind)
        {
            Strings = WishStrings,
            Tension = WishTension,
            Note = WishNote,
            Weeks = Weeks,
            ElsewhereOn = AnsweredElsewhereOn,
        }
        : null;
}
