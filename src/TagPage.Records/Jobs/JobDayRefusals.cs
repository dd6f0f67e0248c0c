using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

public sealed record PromisedBeforeIn(DateOnly ReceivedOn) : Refusal(nameof(JobDays.PromisedFor));

/// <summary>More than a year after it came in.</summary>
public sealed record PromisedTooLate(DateOnly ReceivedOn, DateOnly Promised) : Refusal(nameof(JobDays.PromisedFor));

/// <summary>The shop is closed on the promised day; why, where that was noted, and when it opens again.</summary>
public sealed record PromisedClosed(DateOnly Day, string Note, DateOnly? Next) : Oddity(nameof(JobDays.PromisedFor))
{
    public static PromisedClosed On(DateOnly day, Opening opening) => new(day, opening.ClosedOn(day)?.Note ?? "", opening.NextOpen(day));
}

public sealed record StrungBeforeIn(DateOnly ReceivedOn) : Refusal(nameof(JobDays.StrungOn));

/// <summary>It was collected, and nobody says when it was strung.</summary>
public sealed record CollectedUnstrung() : Refusal(nameof(JobDays.StrungOn));

public sealed record CollectedBeforeStrung(DateOnly StrungOn) : Refusal(nameof(JobDays.CollectedOn));

/// <summary>Its strings ended, and nobody says when they went in.</summary>
public sealed record EndedUnstrung() : Refusal(nameof(JobDays.StrungOn));

/// <summary>Strings cannot end before they went in.</summary>
public sealed record EndsBeforeStrung(string Place, DateOnly StrungOn) : Refusal(Place);

/// <summary>With that day the racket's strings would follow each other in another order; the ticket is one that would be passed.</summary>
public sealed record StrungOutOfOrder(long Ticket, DateOnly On) : Refusal(nameof(JobDays.StrungOn));

/// <summary>Another ticket's strings went into the racket on that very day.</summary>
public sealed record StrungSameDay(long Ticket, DateOnly On) : Oddity(nameof(JobDays.StrungOn));

public sealed record EndWithoutDay() : Refusal(nameof(JobDays.EndedOn));

public sealed record EndWithoutReason() : Refusal(nameof(JobDays.EndedHow));
