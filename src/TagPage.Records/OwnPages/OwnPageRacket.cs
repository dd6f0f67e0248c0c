using TagPage.Core.Jobs;
using TagPage.Core.Rackets;
using TagPage.Records.Jobs;
using TagPage.Records.Tags;

namespace TagPage.Records.OwnPages;

/// <summary>A racket as its own household sees it.</summary>
public sealed record OwnPageRacket : TagRow
{
    public string Frame { get; init; } = "";
    public DateOnly? LostSince { get; init; }
    public string Player { get; init; } = "";

    /// <summary>The ticket that is open for it, and its state; null for none.</summary>
    public long? JobId { get; init; }
    public JobState? JobState { get; init; }
    public bool Expected { get; init; }
    public AskedIn? AskedIn { get; init; }

    /// <summary>Null where none is noted, and where somebody else pays.</summary>
    public long? PriceMinor { get; init; }

    /// <summary>Where they have a price to see: what is still to pay of it, and when all was paid.</summary>
    public long? ToPayMinor { get; init; }
    public DateOnly? PaidOn { get; init; }

    public DateOnly? PromisedFor { get; init; }
    public string AskedWords { get; init; } = "";
    public string DropOffWhere { get; init; } = "";
    /// <summary>The stops where it is left and collected; null for the shop's own bench.</summary>
    public string? LeftAt { get; init; }
    public string? CollectAt { get; init; }

    /// <summary>It is ready and still on its way there.</summary>
    public bool IsToBring { get; init; }
    public DateOnly? DropOffBy { get; init; }
    public DateOnly? NeededBy { get; init; }

    public bool IsMine => State is not RacketState.Sold;

    public bool CanOrder => JobId is null && State is not (RacketState.Sold or RacketState.Gone);

    /// <summary>A ticket that the client asked for, and that is not on the machine yet.</summary>
    public bool CanCancel => JobState is Core.Jobs.JobState.Waiting && (Expected || AskedIn is Jobs.AskedIn.OwnPage);

    /// <summary>As it would be in another role: the share of play follows from how many rackets are in turn and spare.</summary>
    public OwnPageRacket InRole(RacketState role) => this with
    {
        State = role,
        InTurn = InTurn - (State == RacketState.InTurn ? 1 : 0) + (role == RacketState.InTurn ? 1 : 0),
        Spare = Spare - (State == RacketState.Spare ? 1 : 0) + (role == RacketState.Spare ? 1 : 0),
    };
}
