namespace TagPage.Records.Shop;

/// <summary>The settings of the bench as entered.</summary>
public sealed record BenchEntry
{
    public int Version { get; init; }
    public bool Timer { get; init; }
    public bool SingleKeys { get; init; }
}
