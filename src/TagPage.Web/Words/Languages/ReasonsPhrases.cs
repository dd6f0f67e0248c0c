namespace TagPage.Web.Words;

/// <summary>How a restring-by date came about, with the player's habits: for private pages only.</summary>
public sealed record ReasonsPhrases
{
    public required string TimesAWeek { get; init; }
    public required string Once { get; init; }
    public required string FewTimes { get; init; }
    public required string Hours { get; init; }
    public required string HoursHybrid { get; init; }
    public required string HoursLogged { get; init; }
    public required string StandsStill { get; init; }
    public required string PausesLeftOut { get; init; }
    public required string TensionTypical { get; init; }
    public required Counted TensionLearned { get; init; }
    public required string TensionOverTwoYears { get; init; }
    public required string Breakage { get; init; }
    public required string BreakageWithoutPlay { get; init; }
    public required Counted CameOutWhole { get; init; }
    public required string FewBreaks { get; init; }
    public required string StringsUnknown { get; init; }
    public required string NoHours { get; init; }
    public required Counted EveryWeeks { get; init; }
    public required string ShopsDate { get; init; }
    public required string ShopsDateOld { get; init; }
    public required string Age { get; init; }
    public required string NotCounting { get; init; }
}
