using TagPage.Core.Forecast.Learning;
using TagPage.Core.Players;

namespace TagPage.Core.Forecast;

/// <summary>The past of a racket and its player, as far as the restring-by date depends on it.</summary>
public sealed record RacketHistory
{
    /// <summary>Nothing is on file.</summary>
    public static RacketHistory None { get; } = new();

    /// <summary>The player's pauses.</summary>
    public IReadOnlyList<Pause> Pauses { get; init; } = [];

    /// <summary>Hours that were noted for this racket.</summary>
    public IReadOnlyList<LoggedHours> Logged { get; init; } = [];

    /// <summary>Rackets of the player's that are no longer in play.</summary>
    public IReadOnlyList<LeftPlay> Left { get; init; } = [];

    /// <summary>All strings of all the player's rackets, present and past.</summary>
    public IReadOnlyList<JobHistory> Jobs { get; init; } = [];

    /// <summary>The input with all that was learned for the strings that are in it.</summary>
    public ForecastInput AddTo(ForecastInput input) => input with
    {
        Pauses = Pauses,
        Logged = Logged,
        Learned = input.Bed is { } bed ? Learned.From(Jobs, bed.Mains.Material) : Learned.Nothing,
    };
}
