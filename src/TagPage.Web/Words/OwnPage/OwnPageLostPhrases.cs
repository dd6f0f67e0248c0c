namespace TagPage.Web.Words.OwnPage;

/// <summary>Lost and found from the side of the household.</summary>
public sealed record OwnPageLostPhrases
{
    public required string Question { get; init; }
    public required string Button { get; init; }
    public required string Heading { get; init; }
    public required string Text { get; init; }
    public required string Since { get; init; }
    public required string SinceUnread { get; init; }
    public required string SinceLongAgo { get; init; }
    public required string Away { get; init; }
    public required string Note { get; init; }
    public required string NoteHint { get; init; }
    public required string NoteTooLong { get; init; }
    public required string NoteNotPlain { get; init; }
    public required string NoteMail { get; init; }
    public required string NoteLink { get; init; }
    public required string NoteDigits { get; init; }
    public required string NoteName { get; init; }
    public required string Send { get; init; }
    public required string NotMarked { get; init; }
    public required string Saved { get; init; }
    public required string Choice { get; init; }
    public required string ChoiceLink { get; init; }
    public required string IsLost { get; init; }
    public required string ChangeNote { get; init; }
    public required string BackButton { get; init; }
    public required string IsBack { get; init; }
    public required string FoundHeading { get; init; }
    public required string WhichHeading { get; init; }
    public required string GetsHeading { get; init; }
    public required string GetsShop { get; init; }
    public required string GetsMessage { get; init; }
    public required string GetsContact { get; init; }
    public required string GetsText { get; init; }
    public required string ForAll { get; init; }
    public required string IsAlways { get; init; }
    public required string IsWhileLost { get; init; }
    public required string Choose { get; init; }
    public required string WithdrawMessage { get; init; }
    public required string WithdrawContact { get; init; }
    public required string WithdrawHint { get; init; }
    public required string Withdrawn { get; init; }
    public required string WhereContact { get; init; }
    public required string ShowsPhone { get; init; }
    public required string NoPhone { get; init; }
    public required string ShowMail { get; init; }
    public required string Always { get; init; }
    public required string SaveChoice { get; init; }
    public required string ChoiceMissing { get; init; }
    public required string ChoiceSaved { get; init; }
    public required string NothingToShow { get; init; }
    public required string LogHeading { get; init; }
    public required string LogNone { get; init; }
    public required string Answered { get; init; }
}
