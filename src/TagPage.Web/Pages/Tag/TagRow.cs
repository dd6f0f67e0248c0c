using TagPage.Web.Data;

namespace TagPage.Web.Pages.Tag;

/// <summary>A racket with a live tag. Holds habits, for the forecast only: a page is given a <see cref="TagView"/>.</summary>
public record TagRow : ForecastRow
{
    public int Number { get; init; }
    public string TapeColour { get; init; } = "";
    public bool IsLost { get; init; }
    public string LostNote { get; init; } = "";
}
