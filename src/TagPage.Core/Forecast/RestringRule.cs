namespace TagPage.Core.Forecast;

/// <summary>Which limits count for a player's restring-by date.</summary>
public enum RestringRule { TimesAWeek, WhicheverFirst, Hours, EveryWeeks, FixedDate }
