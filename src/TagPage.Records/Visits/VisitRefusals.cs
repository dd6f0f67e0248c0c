using TagPage.Records.Storage;

namespace TagPage.Records.Visits;

public sealed record VisitInFuture() : Refusal(nameof(VisitEntry.DoneOn));

/// <summary>Nothing was ticked.</summary>
public sealed record NothingDone() : Refusal(nameof(VisitEntry.Works));

/// <summary>Something else was done, and nobody said what.</summary>
public sealed record OtherWorkUnsaid() : Refusal(nameof(VisitEntry.Note));

/// <summary>No amount of the shop's currency.</summary>
public sealed record VisitPriceUnlikely() : Refusal(nameof(VisitEntry.Price));

/// <summary>A visit of this racket on this day is on file, as after Back and Save.</summary>
public sealed record VisitSameDay(long Ticket, DateOnly On) : Oddity(nameof(VisitEntry.DoneOn));

/// <summary>Money came in for it, or it stands on a bill.</summary>
public sealed record VisitInTheBooks() : Refusal;
