using TagPage.Core.Rackets;

namespace TagPage.Records.Search;

/// <summary>One racket that fits, or a client or player who has none yet.</summary>
public sealed record SearchRow
{
    public long ClientId { get; init; }
    public string Client { get; init; } = "";
    public string? Phone { get; init; }
    public string? Player { get; init; }
    public long? RacketId { get; init; }
    public int? Number { get; init; }
    public string? Frame { get; init; }
    public string? TapeColour { get; init; }
    public RacketState? State { get; init; }

    /// <summary>The open or last job that was asked for by its ticket number.</summary>
    public long? JobId { get; init; }
    public long? Ticket { get; init; }
}
