namespace TagPage.Records.LostAndFound;

/// <summary>What a finder did, as a notice tells it.</summary>
public sealed record FoundNoticeRow
{
    public long Id { get; init; }
    public FoundKind Kind { get; init; }
    public DateTimeOffset At { get; init; }
    public string Message { get; init; } = "";
    public string Contact { get; init; } = "";
    public int Number { get; init; }
    public string Player { get; init; } = "";
    public bool IsLost { get; init; }
}
