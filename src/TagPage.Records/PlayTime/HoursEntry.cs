namespace TagPage.Records.PlayTime;

/// <summary>Hours played as entered.</summary>
public sealed record HoursEntry
{
    public string FormKey { get; init; } = "";
    public DateOnly PlayedOn { get; init; }
    public decimal Hours { get; init; }
    public string? Note { get; init; }
}
