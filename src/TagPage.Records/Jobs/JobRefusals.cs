using TagPage.Core.Jobs;
using TagPage.Core.Strings;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>The job is not in a state in which this can be done.</summary>
public sealed record JobMovedOn(long Ticket, JobState State) : Refusal
{
    public bool IsVisit { get; init; }

    internal static JobMovedOn Of(JobRow job) => new(job.Ticket, job.State) { IsVisit = job.IsVisit };
}

/// <summary>Its strings have ended, so that it cannot go back to the machine.</summary>
public sealed record StringsEnded(BedEnd How, DateOnly? On) : Refusal;

/// <summary>No such string in the catalogue.</summary>
public sealed record StringUnknown(string Place) : Refusal(Place);

/// <summary>The string typed in is already in the catalogue, in another material.</summary>
public sealed record StringIsOther(string Name, Material Material)
    : Refusal($"{nameof(JobEntry.NewString)}.{nameof(NewStringEntry.Material)}");

/// <summary>A cancelled ticket cannot be strung.</summary>
public sealed record TicketCancelled() : Refusal(nameof(ChangedJobEntry.StrungOn));

/// <summary>The ticket is this racket's already.</summary>
public sealed record SameRacket() : Refusal(nameof(MovedJobEntry.RacketId));

/// <summary>The client asked for the ticket, or said how it felt, and the racket is another client's.</summary>
public sealed record ClientSpokeOfIt(string Client) : Refusal(nameof(MovedJobEntry.RacketId));

/// <summary>Strings that broke in the racket were in it at the same time.</summary>
public sealed record InItThen(long Ticket, DateOnly StrungOn) : Refusal(nameof(MovedJobEntry.RacketId));

/// <summary>The ticket's strings are part of the racket's history.</summary>
public sealed record StringsWentIn(DateOnly StrungOn) : Refusal;

/// <summary>Something was read on the ticket's strings.</summary>
public sealed record ReadingsOnIt() : Refusal;

/// <summary>Photos of the racket are kept with the ticket.</summary>
public sealed record PhotosOnIt() : Refusal;

public sealed record PaidFor(DateOnly On) : Refusal;

/// <summary>The client reads on their own page what becomes of it.</summary>
public sealed record ClientAskedFor(string Client) : Refusal;

/// <summary>The racket is not waiting to be collected.</summary>
public sealed record NotReady() : Refusal;

public sealed record ToldReadyAlready() : Refusal;

/// <summary>The client or the shop has no email address on file.</summary>
public sealed record NoMailAddress() : Refusal;

/// <summary>Nothing was ticked.</summary>
public sealed record NoRacketChosen() : Refusal;

/// <summary>No ticket waits for this racket to be brought; somebody was quicker.</summary>
public sealed record NotAnnounced(string Place) : Refusal(Place);

/// <summary>No such stop, or one that is no longer used.</summary>
public sealed record StopUnknown(string Place) : Refusal(Place);

/// <summary>The racket lies where it was to be collected until now.</summary>
public sealed record BroughtAlready(string Place, string Stop) : Refusal(Place);
