namespace TagPage.Core.Forecast;

/// <summary>What can decide a restring-by date.</summary>
public enum LimitKind { TimesAWeek, Hours, Tension, Breakage, EveryWeeks, OwnersDate, Age }
