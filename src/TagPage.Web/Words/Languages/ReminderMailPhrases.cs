namespace TagPage.Web.Words;

/// <summary>The reminder itself, as mail and as SMS: where the owner has written none of their own.</summary>
public sealed record ReminderMailPhrases
{
    public required string Subject { get; init; }
    public required string Mail { get; init; }
    public required string RacketLine { get; init; }
    public required string RacketPastLine { get; init; }
    public required string Sms { get; init; }
}
