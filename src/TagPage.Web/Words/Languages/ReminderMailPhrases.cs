namespace TagPage.Web.Words;

/// <summary>The reminder itself, as email and as SMS, for owners who have not written their own.</summary>
public sealed record ReminderMailPhrases
{
    public required string Subject { get; init; }
    public required string Mail { get; init; }
    public required string RacketLine { get; init; }
    public required string RacketPastLine { get; init; }
    public required string Sms { get; init; }
}
