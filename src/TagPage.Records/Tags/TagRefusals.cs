using TagPage.Core.Tags;
using TagPage.Records.Storage;

namespace TagPage.Records.Tags;

public sealed record TaggedAlready() : Refusal;

/// <summary>The tag was retired or never linked.</summary>
public sealed record TagNotInUse() : Refusal;

/// <summary>The racket is sold; its new owner's record gets the tag.</summary>
public sealed record RacketSold() : Refusal;

/// <summary>The code cannot be linked to a racket.</summary>
public abstract record NotBlank(string Place) : Refusal(Place);

public sealed record NoSuchTag(string Place = "") : NotBlank(Place);

public sealed record TagOnRacket(int Number, string Player, string Place = "") : NotBlank(Place);

public sealed record TagRetired(string Place = "") : NotBlank(Place);

/// <summary>What was typed does not read as a code.</summary>
public sealed record CodeUnread(TagCodeOutcome Outcome, string Place) : NotBlank(Place);
