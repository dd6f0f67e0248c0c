namespace TagPage.Records.Rackets;

/// <summary>A hand-over as entered.</summary>
public sealed record HandOverEntry
{
    public string FormKey { get; init; } = "";
    public int Version { get; init; }
    public int Number { get; init; }
}
