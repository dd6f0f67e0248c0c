using TagPage.Core.Jobs;
using TagPage.Core.Units;

namespace TagPage.Records.Jobs;

/// <summary>A job as one line of the bench.</summary>
public sealed record BenchRow
{
    public long Id { get; init; }
    public long Ticket { get; init; }
    public JobState State { get; init; }
    public long RacketId { get; init; }
    public int Number { get; init; }
    public string Frame { get; init; } = "";
    public string TapeColour { get; init; } = "";
    public string Player { get; init; } = "";
    public string Client { get; init; } = "";
    public string? Phone { get; init; }
    public string Mains { get; init; } = "";
    public decimal MainsGaugeMm { get; init; }
    public string Crosses { get; init; } = "";
    public decimal CrossesGaugeMm { get; init; }
    public decimal MainsTension { get; init; }
    public decimal CrossesTension { get; init; }
    public TensionUnit TensionUnit { get; init; }
    public DateOnly? PromisedFor { get; init; }
    public DateOnly? StrungOn { get; init; }
    public long? PriceMinor { get; init; }
    public DateOnly? PaidOn { get; init; }

    /// <summary>What the client asked for in a reminder's answer.</summary>
    public string Wish { get; init; } = "";

    /// <summary>The client said yes and has not brought the racket yet.</summary>
    public bool Expected { get; init; }

    /// <summary>Asked for in the client's own page: where and by when it will be brought, and when it is needed.</summary>
    public bool AskedByClient { get; init; }
    public string DropOffWhere { get; init; } = "";
    public DateOnly? DropOffBy { get; init; }
    public DateOnly? NeededBy { get; init; }

    public bool IsHybrid => (Mains, MainsGaugeMm) != (Crosses, CrossesGaugeMm);
}
