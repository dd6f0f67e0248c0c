namespace TagPage.Records.Jobs;

/// <summary>A ticket that belongs to another racket, as entered.</summary>
public sealed record MovedJobEntry
{
    public int Version { get; init; }
    public long RacketId { get; init; }
}
