namespace TagPage.Core.Forecast;

/// <summary>One limit worked out: its day, the numbers that led to it, and whether it has a say.</summary>
/// <param name="Kind">Which limit it is.</param>
/// <param name="Day">The day it asks for; null when it cannot tell.</param>
/// <param name="Strung">The day the strings went in.</param>
public abstract record LimitDay(LimitKind Kind, DateOnly? Day, DateOnly Strung)
{
    /// <summary>Days from stringing to the limit; null when it has no day.</summary>
    public int? Interval => Day?.DayNumber - Strung.DayNumber;

    /// <summary>No limit is worked out further than this from the stringing: ten years.</summary>
    public const int MostDays = 3650;

    /// <summary>Whether the racket's rule lets this limit decide.</summary>
    public bool Counts { get; init; }
}
