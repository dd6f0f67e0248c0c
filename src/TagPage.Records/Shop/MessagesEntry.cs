namespace TagPage.Records.Shop;

/// <summary>The owner's words for messages as entered. Empty stands for the product's own.</summary>
public sealed record MessagesEntry
{
    public int Version { get; init; }
    public string? ReadySubject { get; init; }
    public string? ReadyMarkdown { get; init; }
    public string? ReceivedSubject { get; init; }
    public string? ReceivedMarkdown { get; init; }
    public string? NoticeSubject { get; init; }
    public string? NoticeText { get; init; }
    public int QuietFromHour { get; init; }
    public int QuietUntilHour { get; init; }
}
