namespace TagPage.Web.Words;

/// <summary>The page on which the person who looks after a racket answers a finder once, and the mail it becomes.</summary>
public sealed record AnswerPhrases
{
    public required string Title { get; init; }
    public required string Intro { get; init; }
    public required string Label { get; init; }
    public required string Hint { get; init; }
    public required string Send { get; init; }
    public required string Empty { get; init; }
    public required string SentHeading { get; init; }
    public required string SentText { get; init; }
    public required string Subject { get; init; }
    public required string MailIntro { get; init; }
    public required string MailEnd { get; init; }
}
