using TagPage.Core.Rackets;
using TagPage.Records.Storage;

namespace TagPage.Records.LostAndFound;

/// <summary>There is neither a phone number nor an email address to show to a finder.</summary>
public sealed record NothingToShow() : Refusal(nameof(FoundChoiceEntry.Choice));

/// <summary>A racket cannot have been lost on a future day.</summary>
public sealed record LostInFuture() : Refusal(nameof(LostEntry.Since));

/// <summary>Nobody is still looking for a racket lost more than a year ago.</summary>
public sealed record LostLongAgo() : Refusal(nameof(LostEntry.Since));

/// <summary>The racket was sold, or is no longer the player's: nobody looks for it.</summary>
public sealed record LostAway(RacketState State) : Refusal("");

/// <summary>Everybody can read the note, and it holds what it must not.</summary>
public sealed record LostNoteUnfit(LostNoteFault Fault) : Refusal(nameof(LostEntry.Note));

/// <summary>A finder is answered once.</summary>
public sealed record FinderAnswered() : Refusal("");
