using TagPage.Records.Storage;

namespace TagPage.Records.Rackets;

public sealed record HandedOver() : Refusal(nameof(RacketEntry.State));

public sealed record HandedOverAlready() : Refusal;

/// <summary>Another racket of the player has the number.</summary>
public sealed record NumberTaken(string Player, int Number) : Refusal(nameof(RacketEntry.Number));

/// <summary>The last of several of the same would have a number beyond all.</summary>
public sealed record NumbersEnd(int Number) : Refusal(nameof(RacketEntry.Number));

/// <summary>The player already has this very racket.</summary>
public sealed record SamePlayer(string Player) : Refusal;

public sealed record StillOnBench(long Ticket) : Refusal;
