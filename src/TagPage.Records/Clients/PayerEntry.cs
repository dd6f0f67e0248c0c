namespace TagPage.Records.Clients;

/// <summary>A payer as entered.</summary>
public sealed record PayerEntry
{
    public string FormKey { get; init; } = "";
    public int Version { get; init; }
    public string Name { get; init; } = "";
    public string? Phone { get; init; }
    public string? Mail { get; init; }
    public string? Note { get; init; }
}
