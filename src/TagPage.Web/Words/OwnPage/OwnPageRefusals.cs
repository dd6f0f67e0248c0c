using TagPage.Core.Rackets;
using TagPage.Core.Text;
using TagPage.Records.Jobs;
using TagPage.Records.LostAndFound;
using TagPage.Records.OwnPages;
using TagPage.Records.PlayTime;
using TagPage.Records.Privacy;
using TagPage.Records.Readings;
using TagPage.Records.Storage;

namespace TagPage.Web.Words.OwnPage;

/// <summary>Why something was not saved, as a client reads it: what is in the way and what to do.</summary>
public static class OwnPageRefusals
{
    /// <exception cref="ArgumentOutOfRangeException">A reason clients are never given.</exception>
    public static string Of(Refusal why, Language language)
    {
        var say = OwnPageWords.Of(language);
        return why switch
        {
            SavedMeanwhile => say.Frame.SavedMeanwhile,
            FormKeyUnknown or StopUnknown => say.Frame.SendAgain,
            FinderAnswered => language.Phrases.Answer.SentText,
            _ => OfRackets(why, say, language) ?? OfLost(why, say.Lost) ?? OfOrders(why, say.Order) ?? OfDetails(why, say.Details) ?? OfCodes(why, say.Code)
                ?? throw new ArgumentOutOfRangeException(nameof(why), why.GetType().Name, "No words for this reason."),
        };
    }

    private static string? OfRackets(Refusal why, OwnPagePhrases say, Language language) => why switch
    {
        RoleNotTheirs => say.Racket.RoleMissing,
        HoursUnlikely { Most: var most } => say.Play.HoursUnlikely.Fill(("most", $"{most}")),
        DayFull { Day: var day, Noted: var noted } => say.Play.DayFull.Fill(("day", language.DayInText(day)), ("hours", language.Number(noted))),
        PlayedInFuture => say.Play.DayToCome,
        DaysUnlikely { Most: var most } => say.Play.DaysUnlikely.Fill(("most", $"{most}")),
        PitchUnlikely => say.Play.HertzUnread,
        _ => null,
    };

    private static string? OfLost(Refusal why, OwnPageLostPhrases say) => why switch
    {
        LostInFuture => say.SinceUnread,
        LostLongAgo => say.SinceLongAgo,
        LostAway => say.Away,
        LostNoteUnfit { Fault: LostNoteFault.TooLong } => say.NoteTooLong,
        LostNoteUnfit { Fault: LostNoteFault.NotPlain } => say.NoteNotPlain,
        LostNoteUnfit { Fault: LostNoteFault.MailSign } => say.NoteMail,
        LostNoteUnfit { Fault: LostNoteFault.Link } => say.NoteLink,
        LostNoteUnfit { Fault: LostNoteFault.Digits } => say.NoteDigits,
        LostNoteUnfit => say.NoteName,
        NothingToShow => say.NothingToShow,
        _ => null,
    };

    private static string? OfOrders(Refusal why, OwnPageOrderPhrases say) => why switch
    {
        RacketAtShop => say.AtShop,
        OrderedEnough { Most: var most } => say.TooOften.Fill(("most", $"{most}")),
        NeverStrung => say.NeverStrung,
        RacketGone => say.NotInPlay,
        OrderUnderWay => say.TooLate,
        _ => null,
    };

    private static string? OfDetails(Refusal why, OwnPageDetailsPhrases say) => why switch
    {
        ReachMissing => say.ReachMissing,
        SaidEnough { Most: var most } => say.PayerTooMany.Fill(("most", $"{most}")),
        TicketOpen => say.PassAtShop,
        TicketsOpen => say.ForgetOpen,
        LoanOpen => say.ForgetLoan,
        _ => null,
    };

    private static string? OfCodes(Refusal why, OwnPageCodePhrases say) => why switch
    {
        CodeRanOut => say.RanOut,
        CodeWrong => say.Wrong,
        CodeOver => say.Over,
        CodesEnough => say.TooMany,
        NoAddressOnFile => say.NoMail,
        _ => null,
    };
}
