using TagPage.Core.Jobs;

namespace TagPage.Records.Privacy;

/// <summary>A ticket that is in the way of deleting a client's data.</summary>
public sealed record OpenTicket
{
    public long Id { get; init; }

    /// <summary>Collected for one that is only to be paid.</summary>
    public JobState State { get; init; }
    public string Player { get; init; } = "";
    public int Number { get; init; }
    public bool Expected { get; init; }

    /// <summary>The client asked for it, and it is not on the machine yet.</summary>
    public bool CanCancel { get; init; }
}
