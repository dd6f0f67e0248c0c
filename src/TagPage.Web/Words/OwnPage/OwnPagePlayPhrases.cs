namespace TagPage.Web.Words.OwnPage;

/// <summary>Hours, pauses, what-if and readings.</summary>
public sealed record OwnPagePlayPhrases
{
    public required string Heading { get; init; }
    public required string Text { get; init; }
    public required string Hours { get; init; }
    public required string OtherDays { get; init; }
    public required string NotNoted { get; init; }
    public required string FirstDay { get; init; }
    public required string LastDay { get; init; }
    public required string HoursInAll { get; init; }
    public required string HoursHint { get; init; }
    public required string HoursSaved { get; init; }
    public required string DayFull { get; init; }
    public required string HoursUnlikely { get; init; }
    public required string DayToCome { get; init; }
    public required string DaysUnlikely { get; init; }
    public required string Remove { get; init; }
    public required string Removed { get; init; }
    public required string PauseButton { get; init; }
    public required string PausedSince { get; init; }
    public required string Resume { get; init; }
    public required string PauseSaved { get; init; }
    public required string ResumeSaved { get; init; }
    public required string WhatIfLink { get; init; }
    public required string WhatIfHeading { get; init; }
    public required string WhatIfText { get; init; }
    public required string NotShown { get; init; }
    public required string ShopsDateLeftOut { get; init; }
    public required string Times { get; init; }
    public required string TimesUnlikely { get; init; }
    public required string HoursATime { get; init; }
    public required string WhatIfSend { get; init; }
    public required string Now { get; init; }
    public required string Then { get; init; }
    public required string ReadingLink { get; init; }
    public required string ReadingHeading { get; init; }
    public required string ReadingText { get; init; }
    public required string Hertz { get; init; }
    public required string HertzHint { get; init; }
    public required string HertzUnread { get; init; }
    public required string HertzFar { get; init; }
    public required string ReadingSaved { get; init; }
    public required string PitchesHeading { get; init; }
    public required string Day { get; init; }
    public required string Loss { get; init; }
    public required string ListenHeading { get; init; }
    public required string ListenText { get; init; }
    public required string ListenButton { get; init; }
    public required string Heard { get; init; }
    public required string MicDenied { get; init; }
}
