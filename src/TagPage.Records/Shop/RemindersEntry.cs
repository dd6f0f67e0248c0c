namespace TagPage.Records.Shop;

/// <summary>The settings for reminders as entered.</summary>
public sealed record RemindersEntry
{
    public int Version { get; init; }
    public int DaysBetween { get; init; }
    public string? Subject { get; init; }
    public string? Markdown { get; init; }
    public string? Sms { get; init; }
}
