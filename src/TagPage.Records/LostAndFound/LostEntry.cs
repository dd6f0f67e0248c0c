namespace TagPage.Records.LostAndFound;

/// <summary>A lost racket as entered.</summary>
public sealed record LostEntry
{
    public DateOnly Since { get; init; }
    public string? Note { get; init; }
}
