using TagPage.Core.Forecast;
using TagPage.Core.Players;

namespace TagPage.Records.Players;

/// <summary>A player as entered.</summary>
public sealed record PlayerEntry
{
    public string FormKey { get; init; } = "";
    public int Version { get; init; }
    public string Name { get; init; } = "";
    public bool Junior { get; init; }
    public decimal? TimesAWeek { get; init; }
    public decimal? HoursATime { get; init; }
    public Hitting Hitting { get; init; }
    public RestringRule? Rule { get; init; }
    public int? EveryWeeks { get; init; }
    public string? Note { get; init; }
}
