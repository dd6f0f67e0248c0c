namespace TagPage.Records.OwnPages;

/// <summary>How a client is reached, as the client entered it. Phone numbers as <see cref="Shop.Phones"/> reads them.</summary>
public sealed record ContactEntry
{
    public int Version { get; init; }
    public string Name { get; init; } = "";
    public string? Phone { get; init; }
    public string? Mail { get; init; }
    public string SecondName { get; init; } = "";
    public string? SecondPhone { get; init; }
    public string? SecondMail { get; init; }
}
