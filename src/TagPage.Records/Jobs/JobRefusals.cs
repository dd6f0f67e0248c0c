using TagPage.Core.Jobs;
using TagPage.Core.Strings;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>The job is not in a state in which this can be done.</summary>
public sealed record JobMovedOn(long Ticket, JobState State) : Refusal;

/// <param name="Ticket">The job's.</param>
/// <param name="On">When it was paid; null where it is not.</param>
public sealed record PaidAlready(long Ticket, DateOnly? On) : Refusal;

/// <summary>Its strings have ended, so that it cannot go back to the machine.</summary>
public sealed record StringsEnded(BedEnd How, DateOnly? On) : Refusal;

/// <summary>No such string in the catalogue.</summary>
public sealed record StringUnknown(string Place) : Refusal(Place);

/// <summary>The string typed in is already in the catalogue, in another material.</summary>
public sealed record StringIsOther(string Name, Material Material)
    : Refusal($"{nameof(JobEntry.NewString)}.{nameof(NewStringEntry.Material)}");

/// <summary>A cancelled ticket cannot be strung.</summary>
public sealed record TicketCancelled() : Refusal(nameof(ChangedJobEntry.StrungOn));

/// <summary>The racket is not waiting to be collected.</summary>
public sealed record NotReady() : Refusal;

public sealed record ToldReadyAlready() : Refusal;

/// <summary>The client or the shop has no email address on file.</summary>
public sealed record NoMailAddress() : Refusal;
