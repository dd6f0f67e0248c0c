using TagPage.Records.Clients;
using TagPage.Records.Players;
using TagPage.Records.Rackets;

namespace TagPage.Records.FirstVisits;

/// <summary>Which tag a first racket gets.</summary>
public enum FirstTag { New, Blank, None }

/// <summary>A first visit as entered: a client, a player and a racket in one.</summary>
public sealed record FirstVisitEntry
{
    public string FormKey { get; init; } = "";
    public ClientEntry Client { get; init; } = new();
    public PlayerEntry Player { get; init; } = new();
    public RacketEntry Racket { get; init; } = new();
    public FirstTag Tag { get; init; }
    public string? BlankCode { get; init; }
}
