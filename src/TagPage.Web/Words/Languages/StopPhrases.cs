namespace TagPage.Web.Words;

/// <summary>The page that ends the reminders.</summary>
public sealed record StopPhrases
{
    public required string Title { get; init; }
    public required string Heading { get; init; }
    public required string Text { get; init; }
    public required string Button { get; init; }
    public required string DoneHeading { get; init; }
    public required string DoneText { get; init; }
}
