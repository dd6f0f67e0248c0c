namespace TagPage.Records.Stops;

/// <summary>A place besides the shop's own bench where rackets are left and collected.</summary>
public sealed record StopRow
{
    public long Id { get; init; }
    public string Name { get; init; } = "";
    public StopKind Kind { get; init; }

    /// <summary>It is not offered for new tickets, and no round goes there.</summary>
    public bool IsEnded { get; init; }

    public int Version { get; init; }
}
