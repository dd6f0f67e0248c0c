namespace TagPage.Core.Forecast;

/// <summary>A racket's restring-by date with all that led to it.</summary>
public sealed record RestringBy
{
    /// <summary>Where the racket stands today.</summary>
    public required RestringState State { get; init; }

    /// <summary>Whether it wants a restring by now or soon.</summary>
    public bool IsDue => State is RestringState.Past or RestringState.DueSoon;

    /// <summary>The restring-by date; null when there are no strings or the racket is not in play.</summary>
    public DateOnly? Due { get; init; }

    /// <summary>The limit that decided; null without a date. Has neutral words for public pages.</summary>
    public LimitKind? DecidedBy { get; init; }

    /// <summary>The day from which it counts as due soon; null without a date.</summary>
    public DateOnly? SoonOn { get; init; }

    /// <summary>All limits, also those without a say; for private pages only.</summary>
    public IReadOnlyList<LimitDay> Limits { get; init; } = [];

    /// <summary>Whether the player does not play and nobody knows until when: hours stand still, age goes on.</summary>
    public bool PlayIsPaused { get; init; }

    /// <summary>Days from today to the date, negative when past; null without a date.</summary>
    public int? DaysLeft { get; init; }

    /// <summary>What is left of the time from stringing to the date, 1 on the day of stringing, 0 on the date and after.</summary>
    public double LifeLeft { get; init; }
}
