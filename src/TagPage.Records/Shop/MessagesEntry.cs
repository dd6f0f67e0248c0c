namespace TagPage.Records.Shop;

/// <summary>The owner's words for messages as entered. Empty stands for the product's own.</summary>
public sealed record MessagesEntry
{
    public int Version { get; init; }
    public OwnWords Ready { get; init; } = new();
    public OwnWords Received { get; init; } = new();
    public OwnWords Notice { get; init; } = new();
    public int QuietFromHour { get; init; }
    public int QuietUntilHour { get; init; }
}
