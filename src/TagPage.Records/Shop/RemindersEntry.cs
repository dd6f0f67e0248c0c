namespace TagPage.Records.Shop;

/// <summary>The settings for reminders as entered.</summary>
public sealed record RemindersEntry
{
    public int Version { get; init; }
    public int DaysBetween { get; init; }
    public OwnWords Mail { get; init; } = new();
    public OwnWords Sms { get; init; } = new();
}
