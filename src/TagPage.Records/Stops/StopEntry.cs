namespace TagPage.Records.Stops;

/// <summary>A stop as entered.</summary>
public sealed record StopEntry
{
    public string FormKey { get; init; } = "";
    public int Version { get; init; }
    public string Name { get; init; } = "";
    public StopKind Kind { get; init; }
    public bool IsEnded { get; init; }
}
