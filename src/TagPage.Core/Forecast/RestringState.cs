namespace TagPage.Core.Forecast;

/// <summary>How a racket stands against its restring-by date.</summary>
public enum RestringState
{
    /// <summary>The date is some way off.</summary>
    Good,

    /// <summary>The date is near, or today.</summary>
    DueSoon,

    /// <summary>The date was yesterday or earlier.</summary>
    Past,

    /// <summary>The strings broke or were cut out.</summary>
    NoStrings,

    /// <summary>The shop has not strung this racket yet.</summary>
    NotStrungYet,

    /// <summary>Resting, damaged, sold or gone: no date.</summary>
    NotInPlay,
}
