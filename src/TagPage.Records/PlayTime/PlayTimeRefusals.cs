using TagPage.Records.Storage;

namespace TagPage.Records.PlayTime;

/// <summary>Hours played are more than 0 and at most so many in one note.</summary>
public sealed record HoursUnlikely(int Most) : Refusal(nameof(HoursEntry.Hours));

/// <summary>Hours cannot be noted before they were played.</summary>
public sealed record PlayedInFuture(DateOnly Today) : Refusal(nameof(HoursEntry.PlayedOn));

/// <summary>The last day of a pause lies before the first.</summary>
public sealed record PauseEndsEarly() : Refusal(nameof(PauseEntry.ToOn));
