namespace TagPage.Web.Words.OwnPage;

/// <summary>
/// What the client's own page and its emails say. One file per language beside this one; a language without a file
/// is not offered, and the page is in English.
/// </summary>
public sealed record OwnPagePhrases
{
    public required OwnPageFramePhrases Frame { get; init; }
    public required OwnPageLinkPhrases Link { get; init; }
    public required OwnPageMailPhrases Mail { get; init; }
    public required OwnPageHomePhrases Home { get; init; }
    public required OwnPageRacketPhrases Racket { get; init; }
    public required OwnPageSpecPhrases Spec { get; init; }
    public required OwnPageOrderPhrases Order { get; init; }
    public required OwnPageLostPhrases Lost { get; init; }
    public required OwnPageCodePhrases Code { get; init; }
    public required OwnPageDetailsPhrases Details { get; init; }
    public required OwnPagePlayPhrases Play { get; init; }
    public required OwnPagePaperPhrases Paper { get; init; }
}

/// <summary>What stands around every page of the own page.</summary>
public sealed record OwnPageFramePhrases
{
    public required string Title { get; init; }
    public required string Rackets { get; init; }
    public required string Found { get; init; }
    public required string Details { get; init; }
    public required string SignOut { get; init; }
    public required string MenuRackets { get; init; }
    public required string MenuFound { get; init; }
    public required string MenuDetails { get; init; }
    public required string MenuOut { get; init; }
    public required string Menu { get; init; }
    public required string ToContent { get; init; }
    public required string Error { get; init; }
    public required string NotSaved { get; init; }
    public required string SavedMeanwhile { get; init; }
    public required string SendAgain { get; init; }
    public required string Back { get; init; }
}

/// <summary>Getting in with a private link, asking for one, and getting out.</summary>
public sealed record OwnPageLinkPhrases
{
    public required string EnterHeading { get; init; }
    public required string EnterText { get; init; }
    public required string EnterButton { get; init; }
    public required string EnterHint { get; init; }
    public required string VoidHeading { get; init; }
    public required string VoidText { get; init; }
    public required string AskHeading { get; init; }
    public required string AskText { get; init; }
    public required string AskLabel { get; init; }
    public required string AskHint { get; init; }
    public required string AskButton { get; init; }
    public required string NotAsked { get; init; }
    public required string AskUnread { get; init; }
    public required string AskTooMany { get; init; }
    public required string AskedHeading { get; init; }
    public required string AskedMail { get; init; }
    public required string AskedPhone { get; init; }
    public required string OutHeading { get; init; }
    public required string OutText { get; init; }
    public required string OutButton { get; init; }
    public required string EverywhereHeading { get; init; }
    public required string EverywhereText { get; init; }
    public required string EverywhereButton { get; init; }
    public required string IsOutHeading { get; init; }
    public required string IsOutText { get; init; }
    public required string IsOutEverywhereText { get; init; }
}

/// <summary>Emails and texts about the own page.</summary>
public sealed record OwnPageMailPhrases
{
    public required string LinkSubject { get; init; }
    public required string LinkBody { get; init; }
    public required string LinkSms { get; init; }
    public required string ReceivedSubject { get; init; }
    public required string ReceivedBody { get; init; }
    public required string ReadySubject { get; init; }
    public required string ReadyBody { get; init; }
    public required string Paid { get; init; }
    public required string ReadySms { get; init; }

    /// <summary>Where it is, and where it is still to be brought.</summary>
    public required string WaitsAt { get; init; }
    public required string ComesTo { get; init; }

    /// <summary>The same for several rackets.</summary>
    public required string AllReadyBody { get; init; }
    public required string AllReadySms { get; init; }

    /// <summary>The same after a visit, of which no strings are new.</summary>
    public required string DoneSubject { get; init; }
    public required string DoneBody { get; init; }
    public required string DoneSms { get; init; }
    public required string AllDoneBody { get; init; }
    public required string AllDoneSms { get; init; }
    public required string ContactSubject { get; init; }
    public required string ContactBody { get; init; }
    public required string ForgetSubject { get; init; }
    public required string ForgetBody { get; init; }
    public required string CodeSubject { get; init; }
    public required string CodeBody { get; init; }
    public required string ConsentSubject { get; init; }
    public required string ConsentBody { get; init; }
}

/// <summary>The own page's first page.</summary>
public sealed record OwnPageHomePhrases
{
    public required string Heading { get; init; }
    public required string None { get; init; }
    public required string ToPay { get; init; }
    public required string PrepaidLeft { get; init; }
    public required string PayByPhone { get; init; }
    public required string PayByTransfer { get; init; }
}
