using TagPage.Records.Storage;

namespace TagPage.Records.PlayTime;

/// <summary>Hours played are 0 or more and at most so many in one note.</summary>
public sealed record HoursUnlikely(int Most) : Refusal(nameof(HoursEntry.Hours));

/// <summary>A day cannot hold more hours than it has; so many are noted already.</summary>
public sealed record DayFull(DateOnly Day, decimal Noted) : Refusal(nameof(HoursEntry.Hours));

/// <summary>Hours cannot be noted before they were played.</summary>
public sealed record PlayedInFuture(DateOnly Today) : Refusal(nameof(HoursEntry.PlayedOn));

/// <summary>Of several days the last lies before the first, or they are more than one note takes.</summary>
public sealed record DaysUnlikely(int Most) : Refusal(nameof(HoursEntry.LastDay));

/// <summary>The last day of a pause lies before the first.</summary>
public sealed record PauseEndsEarly() : Refusal(nameof(PauseEntry.ToOn));
