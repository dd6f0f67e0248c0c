namespace TagPage.Records.Clients;

/// <summary>A client as entered.</summary>
public sealed record ClientEntry
{
    public string FormKey { get; init; } = "";
    public int Version { get; init; }
    public string Name { get; init; } = "";
    public string? Phone { get; init; }
    public string? Mail { get; init; }
    public string Language { get; init; } = "";
    public long? PayerId { get; init; }
    public bool Reminders { get; init; } = true;
    public string? Note { get; init; }
}
