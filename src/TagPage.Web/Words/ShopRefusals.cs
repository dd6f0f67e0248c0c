using TagPage.Core.Rackets;
using TagPage.Core.Tags;
using TagPage.Records.Clients;
using TagPage.Records.LostAndFound;
using TagPage.Records.OwnPages;
using TagPage.Records.PlayTime;
using TagPage.Records.Rackets;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Strings;
using TagPage.Records.Tags;

namespace TagPage.Web.Words;

/// <summary>Why something was not saved, as the shop reads it: what is in the way and what to do.</summary>
public static class ShopRefusals
{
    /// <exception cref="ArgumentOutOfRangeException">A reason the shop is never given.</exception>
    public static string Of(Refusal why) => why switch
    {
        SavedMeanwhile => "Somebody else saved this record while you had it open. Nothing of yours is saved yet. "
            + "Compare with the saved record, then save again to put yours in its place.",
        FormKeyUnknown => "Load this page once more, then send it again.",
        _ => OfPeople(why) ?? OfRackets(why) ?? JobRefusalWords.Of(why) ?? OfReminders(why)
            ?? throw new ArgumentOutOfRangeException(nameof(why), why.GetType().Name, "No words for this reason."),
    };

    private static string? OfPeople(Refusal why) => why switch
    {
        PayerUnknown => "Choose a payer of the list.",
        NothingToShow => "There is nothing to show yet. Put a phone number on the client’s record, or show the mail address.",
        LostInFuture => "This day is still to come. Write the day it was last seen.",
        LostLongAgo => "This was more than a year ago. Write a day of the last twelve months.",
        LostNoteUnfit { Fault: var fault } => Of(fault),
        LinkOver => "This link was taken back or has run out. Make a new one.",
        NoAddressOnFile => "There is no mail address on file for this client.",
        GuideNameTaken => "Another guide has this address already.",
        HoursUnlikely { Most: var most } => $"Write between 0.1 and {most} hours.",
        PlayedInFuture { Today: var today } => $"This day is still to come; today is {Formats.Day(today)}.",
        PauseEndsEarly => "The last day lies before the first.",
        _ => null,
    };

    private static string Of(LostNoteFault fault) => fault switch
    {
        LostNoteFault.TooLong => "Keep the note within 140 characters.",
        LostNoteFault.NotPlain => "Write the note in plain characters on one line.",
        LostNoteFault.MailSign => "Everybody can read the note: take the @ out.",
        LostNoteFault.Link => "Everybody can read the note: take the link out. After a full stop leave a space.",
        LostNoteFault.Digits => "Everybody can read the note: take the number out. It has six digits or more, like a phone number.",
        _ => "Everybody can read the note: take the name of the client or player out.",
    };

    private static string? OfRackets(Refusal why) => why switch
    {
        TaggedAlready => "This racket has a tag. Replace that one instead.",
        TagNotInUse => "This tag is not in use any more. Look at the racket’s card for the one that is.",
        RacketSold => "This racket is sold. Its new owner’s record gets the tag.",
        NoSuchTag => "There is no tag with this code. Compare each character with the tag.",
        TagOnRacket on => $"This tag is on racket {on.Number} of {on.Player}. Take another one.",
        TagRetired => "This tag was retired for good. Take another one.",
        CodeUnread { Outcome: TagCodeOutcome.WrongCheckCharacter } => "Look again at the tag: one character is different there.",
        CodeUnread => "A code has eleven letters and digits, like 7K2M-9Q4T-XAV.",
        HandedOver => "This racket was handed over. Hand it over again from the player who has it now.",
        HandedOverAlready => "This racket was handed over already.",
        NumberTaken taken => $"{taken.Player} has a racket {taken.Number} already. Take another number.",
        SamePlayer same => $"{same.Player} has this racket. Choose somebody else.",
        StillOnBench still => $"Ticket {still.Ticket} is still on the bench. Hand it out or cancel it first.",
        StringInUse => "This string stands in jobs already. Add a new string for another gauge or material.",
        StringNameTaken => "A string with this name and gauge is in the catalogue already.",
        _ => null,
    };

    private static string? OfReminders(Refusal why) => why switch
    {
        NothingDue => "Nothing of this client is due now, so there is nothing to remind of.",
        RemindersUnwanted => "This client wants no reminders. If they changed their mind, say so on the client’s page first.",
        QuietMonth => "This client wants no reminders in this month. Tick below if you want to remind all the same.",
        RemindedLately { Days: var days } => $"This household was reminded less than {days} days ago. Tick below if you want to remind it all the same.",
        ReminderVoid => "This reminder was taken back or replaced by a newer one.",
        ClientHasNoMail => "There is no mail address on file for this client. Add one, or send the text another way.",
        ShopHasNoMail => "The shop has no mail address of its own yet. Write it under Settings → The shop.",
        MailedAlready => "The mail of this reminder is on its way or has gone out already.",
        MailNotGivenUp => "This mail cannot be tried again: it is on its way, or its reminder was stopped or taken back.",
        NobodyChosen => "Tick at least one household.",
        _ => null,
    };

    /// <summary>Why a household of a batch was left out.</summary>
    /// <param name="why">The reason.</param>
    /// <param name="days">The shop's own rule of days between two reminders.</param>
    public static string Of(LeftOut why, int days) => why switch
    {
        LeftOut.NothingDue => "nothing is due any more",
        LeftOut.NoReminders => "wants no reminders",
        LeftOut.WishesSms => "wishes SMS, which you send yourself",
        LeftOut.NoMail => "no mail address on file",
        LeftOut.QuietMonth => "wants no reminders in this month",
        LeftOut.TooSoon => $"reminded less than {days} days ago",
        LeftOut.ShopHasNoMail => "the shop has no mail address of its own",
        _ => "no longer on file",
    };
}
