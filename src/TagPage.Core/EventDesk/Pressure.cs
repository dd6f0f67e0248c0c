namespace TagPage.Core.EventDesk;

/// <summary>How a racket stands to the time it is needed by; shown with a word, never by colour alone.</summary>
public enum Pressure
{
    /// <summary>Nobody waits for it at a certain time.</summary>
    None,

    /// <summary>Ready well before it is needed.</summary>
    OnTime,

    /// <summary>Ready within <see cref="Pressures.TightMinutes"/> minutes of the time it is needed by.</summary>
    Tight,

    /// <summary>Ready after it is needed, or not at all in the hours there are.</summary>
    Late,
}

/// <summary>Tells how a racket stands.</summary>
public static class Pressures
{
    /// <summary>From here on it is close.</summary>
    public const int TightMinutes = 15;

    /// <param name="entry">
    /// The racket. Only to a match can it be close: a promise without one is the first moment that can be kept, so that each would be
    /// close from the start. It is late once it cannot be kept.
    /// </param>
    /// <param name="ready">When it should be ready; null for not at all.</param>
    public static Pressure Of(DeskEntry entry, DateTime? ready) => (entry.NeededBy ?? entry.Promised) switch
    {
        null => ready is null ? Pressure.Late : Pressure.None,
        { } need when ready is null || ready > need => Pressure.Late,
        { } need when entry.NeededBy is not null && ready >= need.AddMinutes(-TightMinutes) => Pressure.Tight,
        _ => Pressure.OnTime,
    };
}
