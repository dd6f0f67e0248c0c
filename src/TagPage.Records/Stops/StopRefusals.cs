using TagPage.Records.Storage;

namespace TagPage.Records.Stops;

/// <summary>Another stop has this name; the round would not tell them apart.</summary>
public sealed record StopNameTaken() : Refusal(nameof(StopEntry.Name));

/// <summary>Rackets are still there, or are to go there.</summary>
public sealed record StopHasRackets(int Count) : Refusal(nameof(StopEntry.IsEnded));

/// <summary>Somebody else moved the racket meanwhile.</summary>
public sealed record RoundMovedOn(long Ticket) : Refusal;
