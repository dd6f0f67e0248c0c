namespace TagPage.Core.Forecast;

/// <summary>One limit worked out: its day, the numbers that led to it, and whether it has a say.</summary>
/// <param name="Kind">Which limit it is.</param>
/// <param name="Day">The day it asks for; null when it cannot tell.</param>
public abstract record LimitDay(LimitKind Kind, DateOnly? Day)
{
    /// <summary>Whether the racket's rule lets this limit decide.</summary>
    public bool Counts { get; init; }

    /// <summary>How the day came about, with numbers. Holds the player's habits: for private pages only.</summary>
    public abstract string Why { get; }
}
