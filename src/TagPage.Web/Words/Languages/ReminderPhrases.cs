namespace TagPage.Web.Words;

/// <summary>The page behind a reminder's private link.</summary>
public sealed record ReminderPhrases
{
    public required string Title { get; init; }
    public required string Heading { get; init; }
    public required string Intro { get; init; }
    public required string Due { get; init; }
    public required string StrungOn { get; init; }
    public required string WhyHeading { get; init; }
    public required string Counts { get; init; }
    public required string Question { get; init; }
    public required string ForAll { get; init; }
    public required string ForAllHint { get; init; }
    public required string ForEach { get; init; }
    public required string Same { get; init; }
    public required string Different { get; init; }
    public required string Strings { get; init; }
    public required string Tension { get; init; }
    public required string Note { get; init; }
    public required string TensionCaution { get; init; }
    public required string PainCaution { get; init; }
    public required string NotYet { get; init; }
    public required string Weeks { get; init; }
    public required string Elsewhere { get; init; }
    public required string ElsewhereOn { get; init; }
    public required string Gone { get; init; }
    public required string Stop { get; init; }
    public required string Send { get; init; }
    public required string Saved { get; init; }
    public required string SavedSame { get; init; }
    public required string SavedDifferent { get; init; }
    public required string SavedNotYet { get; init; }
    public required string SavedElsewhere { get; init; }
    public required string SavedGone { get; init; }
    public required string SavedStop { get; init; }
    public required string Changeable { get; init; }
    public required string OnMachine { get; init; }
    public required string AtShop { get; init; }
    public required string Done { get; init; }
    public required string NotSaved { get; init; }
    public required string ValidUntil { get; init; }
    public required string VoidHeading { get; init; }
    public required string VoidText { get; init; }
    public required string AnswerMissing { get; init; }
    public required string WeeksUnread { get; init; }
    public required string DayUnread { get; init; }
    public required string WishMissing { get; init; }
    public required string TextTooLong { get; init; }
    public required string OneLine { get; init; }
}
