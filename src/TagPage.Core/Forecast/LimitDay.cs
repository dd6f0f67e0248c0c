namespace TagPage.Core.Forecast;

/// <summary>One limit worked out: its day, the numbers that led to it, and whether it has a say.</summary>
/// <param name="Kind">Which limit it is.</param>
/// <param name="Day">The day it asks for; null when it cannot tell.</param>
public abstract record LimitDay(LimitKind Kind, DateOnly? Day)
{
    /// <summary>No limit is worked out further than this from the stringing: ten years.</summary>
    public const int MostDays = 3650;

    /// <summary>Whether the racket's rule lets this limit decide.</summary>
    public bool Counts { get; init; }
}
