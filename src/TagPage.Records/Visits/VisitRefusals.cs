using TagPage.Records.Storage;

namespace TagPage.Records.Visits;

public sealed record VisitInFuture() : Refusal(nameof(VisitEntry.DoneOn));

/// <summary>Before the racket came in, or after it was collected.</summary>
public sealed record DoneOutOfOrder(DateOnly ReceivedOn, DateOnly? CollectedOn) : Refusal(nameof(VisitEntry.DoneOn));

/// <summary>It is done, and nobody says when.</summary>
public sealed record DoneWithoutDay() : Refusal(nameof(VisitEntry.DoneOn));

/// <summary>Nothing was ticked.</summary>
public sealed record NothingDone() : Refusal(nameof(VisitEntry.Works));

/// <summary>Something else was done, and nobody said what.</summary>
public sealed record OtherWorkUnsaid() : Refusal(nameof(VisitEntry.Note));

/// <summary>No amount of the shop's currency.</summary>
public sealed record VisitPriceUnlikely() : Refusal(nameof(VisitEntry.Price));

/// <summary>A visit of this racket on this day is on file, as after Back and Save; or one waits already, where there is no day.</summary>
public sealed record VisitSameDay(long Ticket, DateOnly? On) : Oddity(nameof(VisitEntry.DoneOn));

/// <summary>Money came in for it, or it stands on a bill.</summary>
public sealed record VisitInTheBooks() : Refusal;
