namespace TagPage.Records.PlayTime;

/// <summary>Days without play as entered.</summary>
public sealed record PauseEntry
{
    public string FormKey { get; init; } = "";
    public DateOnly FromOn { get; init; }
    public DateOnly? ToOn { get; init; }
    public string? Note { get; init; }
}
