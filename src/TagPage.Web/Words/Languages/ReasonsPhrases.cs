namespace TagPage.Web.Words;

/// <summary>How a restring-by date came about, with the player's habits: for private pages only.</summary>
public sealed record ReasonsPhrases
{
    public required string TimesAWeek { get; init; }
    public required string FewTimes { get; init; }
    public required string Hours { get; init; }
    public required string HoursHybrid { get; init; }
    public required string StringsUnknown { get; init; }
    public required string NoHours { get; init; }
    public required Counted EveryWeeks { get; init; }
    public required string ShopsDate { get; init; }
    public required string ShopsDateOld { get; init; }
}
