namespace TagPage.Core.Forecast;

/// <summary>
/// The neutral words for what decided a date, the only ones a public page may show: nothing about habits.
/// All in one place, to be translated.
/// </summary>
public static class PublicReason
{
    /// <summary>"because of hours played" and the like, to follow a date.</summary>
    public static string Of(LimitKind kind) => kind switch
    {
        LimitKind.Hours => "because of hours played",
        LimitKind.OwnersDate => "because the shop chose this date",
        LimitKind.TimesAWeek or LimitKind.EveryWeeks => "because of time",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a limit."),
    };
}
