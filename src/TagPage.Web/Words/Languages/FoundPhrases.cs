namespace TagPage.Web.Words;

/// <summary>The page for whoever found a racket; worded the same for everybody.</summary>
public sealed record FoundPhrases
{
    public required string Title { get; init; }
    public required string Heading { get; init; }
    public required string Intro { get; init; }
    public required string ShowContact { get; init; }
    public required string ShowHint { get; init; }
    public required string ContactHeading { get; init; }
    public required string Call { get; init; }
    public required string Mail { get; init; }
    public required string AnswersHeading { get; init; }
    public required string AnswersHint { get; init; }
    public required string AtDesk { get; init; }
    public required string HaveIt { get; init; }
    public required string StillThere { get; init; }
    public required string PlaceLabel { get; init; }
    public required string PlaceHint { get; init; }
    public required string PlaceEmpty { get; init; }
    public required string MessageHeading { get; init; }
    public required string MessageLabel { get; init; }
    public required string MessageHint { get; init; }
    public required string ReachLabel { get; init; }
    public required string ReachHint { get; init; }
    public required string Send { get; init; }
    public required string SentHeading { get; init; }
    public required string SentAnswer { get; init; }
    public required string SentMessage { get; init; }

    /// <summary>Of either, where no email reaches the person who looks after the racket.</summary>
    public required string SentByShop { get; init; }
    public required string SentNext { get; init; }
    public required string SentNextDesk { get; init; }
    public required string SayMore { get; init; }
    public required string ShopOnly { get; init; }
    public required string ShopHeading { get; init; }
    public required string OrShop { get; init; }
    public required string TooMany { get; init; }
    public required string TooManyMessages { get; init; }
    public required string NotPassedOn { get; init; }
    public required string NoteLabel { get; init; }
    public required string ToTag { get; init; }
    public required string MessageEmpty { get; init; }
    public required string MessageTooLong { get; init; }
    public required string ReachTooLong { get; init; }
}
