using TagPage.Records.DueDates;

namespace TagPage.Records.Tags;

/// <summary>A racket with a live tag. Holds habits, for the forecast only: never passed to a page.</summary>
public record TagRow : ForecastRow
{
    public int Number { get; init; }
    public string TapeColour { get; init; } = "";
    public bool IsLost { get; init; }
    public string LostNote { get; init; } = "";
}
