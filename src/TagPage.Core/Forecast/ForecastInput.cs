using TagPage.Core.Forecast.Learning;
using TagPage.Core.Players;
using TagPage.Core.Rackets;
using TagPage.Core.Sports;
using TagPage.Core.Strings;

namespace TagPage.Core.Forecast;

/// <summary>Everything about one racket that its restring-by date depends on.</summary>
public sealed record ForecastInput
{
    /// <summary>The sport, for base hours and reference diameter.</summary>
    public required Sport Sport { get; init; }

    /// <summary>The state of the racket; only rackets in play have a date.</summary>
    public required RacketState Racket { get; init; }

    /// <summary>The player's habits with all rackets together.</summary>
    public required Play Play { get; init; }

    /// <summary>The racket's share of that play, 0 to 1; see <see cref="RacketShare"/>.</summary>
    public required double Share { get; init; }

    /// <summary>What the share was while other rackets took their part, the earliest first: a change today says nothing about the days before.</summary>
    public IReadOnlyList<EarlierShare> EarlierShares { get; init; } = [];

    /// <summary>Days on which the player is not playing.</summary>
    public IReadOnlyList<Pause> Pauses { get; init; } = [];

    /// <summary>Hours that were noted for this racket.</summary>
    public IReadOnlyList<LoggedHours> Logged { get; init; } = [];

    /// <summary>What this player's earlier strings of the same main-string material have taught.</summary>
    public Learned Learned { get; init; } = Learned.Nothing;

    /// <summary>The strings that are in; null when not known.</summary>
    public Bed? Bed { get; init; }

    /// <summary>Number of mains of the racket's pattern; null when not known.</summary>
    public int? Mains { get; init; }

    /// <summary>The day the present strings went in; null when the shop never strung this racket.</summary>
    public DateOnly? StrungOn { get; init; }

    /// <summary>The day the present strings broke or came out; null while they are in.</summary>
    public DateOnly? BedEndedOn { get; init; }

    /// <summary>The player's rule; null for whichever comes first.</summary>
    public RestringRule? Rule { get; init; }

    /// <summary>For the rule "every N weeks"; null or 0 when there is no number.</summary>
    public int? EveryWeeks { get; init; }

    /// <summary>The date the owner set by hand; overrules every rule.</summary>
    public DateOnly? OwnersDate { get; init; }
}
