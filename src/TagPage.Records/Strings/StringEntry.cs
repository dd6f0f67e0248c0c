using TagPage.Core.Strings;

namespace TagPage.Records.Strings;

/// <summary>A string of the catalogue as entered.</summary>
public sealed record StringEntry
{
    public string FormKey { get; init; } = "";
    public int Version { get; init; }
    public string Name { get; init; } = "";
    public Material Material { get; init; }
    public decimal GaugeMm { get; init; }
    public bool Offered { get; init; } = true;
    public string? Note { get; init; }
}
