namespace TagPage.Records.Accounts;

/// <summary>A helper as entered.</summary>
public sealed record HelperEntry
{
    public string FormKey { get; init; } = "";
    public string Name { get; init; } = "";
    public string NormalizedName { get; init; } = "";
    public string? Mail { get; init; }
}
