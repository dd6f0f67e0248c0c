using TagPage.Core.Rackets;
using TagPage.Core.Tags;
using TagPage.Records.Accounts;
using TagPage.Records.Backups;
using TagPage.Records.Clients;
using TagPage.Records.Customising;
using TagPage.Records.Frames;
using TagPage.Records.LostAndFound;
using TagPage.Records.Machines;
using TagPage.Records.OwnPages;
using TagPage.Records.PlayTime;
using TagPage.Records.Privacy;
using TagPage.Records.Rackets;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Stock;
using TagPage.Records.Storage;
using TagPage.Records.StringingLists;
using TagPage.Records.Strings;
using TagPage.Records.Tags;
using TagPage.Records.WholeShop;

namespace TagPage.Web.Words;

/// <summary>Why something was not saved, as the shop reads it: what is wrong and what to do.</summary>
public static class ShopRefusals
{
    /// <exception cref="ArgumentOutOfRangeException">A reason the shop is never given.</exception>
    public static string Of(Refusal why) => why switch
    {
        SavedMeanwhile => "Somebody else saved this record while you had it open. Your changes are not saved yet. "
            + "Compare them with the saved record, then save again to replace it.",
        FormKeyUnknown => "Reload this page, then send it again.",
        PlanOutdated => "The racket was measured or changed after this plan was made. Make the plan again.",
        NothingPlanned => "There is nothing to add or to take off.",
        StockTooLong => "That is more string than can be kept account of. Check the number.",
        FrameNameTaken => "The catalogue already has a frame of this name for this sport. Change that one, or enter another name.",
        ListInUse { By: var by } => $"Something stands on what this list brought: {StringingListWords.Of(by)}. {StringingListWords.Advice(by)}",
        ShopInUse => "This shop has records of its own already. Records that were moved out can only be taken in by a shop that has none yet.",
        ShopFileWrong wrong => WholeShopWords.Of(wrong),
        AddedLater => "It was put on after that day. Enter the day it came off.",
        _ => OfPeople(why) ?? OfRackets(why) ?? JobRefusalWords.Of(why) ?? ReadingRefusalWords.Of(why) ?? EventRefusalWords.Of(why) ?? OfReminders(why) ?? OfBackups(why) ?? PriceWords.Of(why) ?? StopWords.Of(why) ?? LoanWords.Of(why)
            ?? throw new ArgumentOutOfRangeException(nameof(why), why.GetType().Name, "No words for this reason."),
    };

    private static string? OfBackups(Refusal why) => why switch
    {
        BackupFolderMissing => "There is no such folder on the machine the program runs on. Create it first, and enter its full path, like /media/usb.",
        BackupFolderIsData => "This folder is inside the data folder, or contains it. Choose one on another drive.",
        BackupFolderNotWritable => "The program is not allowed to write there. Give write permission to the user it runs as, or choose another folder.",
        _ => null,
    };

    private static string? OfPeople(Refusal why) => why switch
    {
        MachineNameTaken => "Another machine has this name, and tickets would not tell them apart. Choose another one.",
        CheckInFuture => "This day is in the future. Enter the day of the check.",
        SignInNameTaken => "Somebody else signs in by this name. Choose another one.",
        PayerUnknown => "Choose a payer from the list.",
        NothingToShow => "There is nothing to show yet. Add a phone number on the client’s card, or show the email address.",
        LostInFuture => "This day is in the future. Enter the day it was last seen.",
        LostAway { State: var state } => $"This racket is marked as {EnglishNames.Of(state)}, so it cannot be marked as lost. If they still have it, change that on its card first.",
        LostLongAgo => "This was more than a year ago. Enter a day within the last twelve months.",
        LostNoteUnfit { Fault: var fault } => Of(fault),
        LinkOver => "This link was withdrawn or has expired. Make a new one.",
        NoAddressOnFile => "There is no email address on file for this client. Add one first.",
        LoanOpen => "Not yet: this client still has a racket of yours on loan. Note that it is back first.",
        TicketsOpen => "Not yet: one of this client’s tickets still has to be strung, collected or paid for. Finish or cancel it first.",
        ClosedBackwards => "The last day is before the first. Correct one of them.",
        ClosedFarAway => "Check the year: enter days that are not over yet, at most three years ahead and at most a year in a row.",
        GuideNameTaken => "Another guide already has this address. Choose a different name.",
        HoursUnlikely { Most: var most } => $"Enter between 0 and {most} hours.",
        DayFull { Day: var day, Noted: var noted } => $"{Formats.Number(noted)} h are already logged for {Formats.Day(day)}, all of this player’s rackets together. A day has only 24.",
        DaysUnlikely { Most: var most } => $"The last day is before the first, or more than {most} days after it. Correct one of them.",
        PlayedInFuture { Today: var today } => $"This day is in the future; today is {Formats.Day(today)}.",
        PauseEndsEarly => "The last day is before the first. Correct one of them.",
        _ => null,
    };

    private static string Of(LostNoteFault fault) => fault switch
    {
        LostNoteFault.TooLong => "Shorten the note to 140 characters.",
        LostNoteFault.NotPlain => "Write the note on one line, in plain characters.",
        LostNoteFault.MailSign => "Everybody can read the note: leave out the @.",
        LostNoteFault.Link => "Everybody can read the note: leave out the link. After a full stop, leave a space.",
        LostNoteFault.Digits => "Everybody can read the note: leave out the number. It has six digits or more, like a phone number.",
        _ => "Everybody can read the note: leave out the name of the client or player.",
    };

    private static string? OfRackets(Refusal why) => why switch
    {
        TaggedAlready => "This racket has a tag. Replace that one instead.",
        TagNotInUse => "This tag is no longer in use. The racket’s card shows the one that is.",
        RacketSold => "This racket is sold. Link the tag on its new owner’s record.",
        NoSuchTag => "There is no tag with this code. Compare each character with the tag.",
        TagOnRacket on => $"This tag is on {on.Player}’s racket {on.Number}. Use another one.",
        TagRetired => "This tag was retired for good. Use another one.",
        CodeUnread { Outcome: TagCodeOutcome.WrongCheckCharacter } => "Check the tag again: one character is different there.",
        CodeUnread => "A code has eleven letters and digits, for example 7K2M-9Q4T-XAV.",
        HandedOver => "This racket now belongs to another player. Hand it over from there.",
        HandedOverAlready => "This racket has already been handed over.",
        NumbersEnd end => $"The last one would be racket {end.Number}; numbers end at {RacketEntry.LastNumber}. Begin with a lower one.",
        NumberTaken taken => $"{taken.Player} already has a racket {taken.Number}. Choose another number.",
        SamePlayer same => $"{same.Player} already has this racket. Choose somebody else.",
        StillOnBench still => $"Ticket {still.Ticket} is still on the bench. Hand it out or cancel it first.",
        StringInUse => "This string has already been used in jobs. Add a new string for another gauge or material.",
        StringNameTaken => "A string with this name and gauge is already in the catalogue. Use that one, or enter another name.",
        _ => null,
    };

    private static string? OfReminders(Refusal why) => why switch
    {
        NothingDue => "None of this client’s rackets is due now, so there is nothing to remind them of.",
        RemindersUnwanted => "This client wants no reminders. If they have changed their mind, change that on the client’s card first.",
        QuietMonth => "This client wants no reminders this month. Tick the box below to send one anyway.",
        ReminderWaits => "A reminder to this household is already waiting to be sent. Tick the box below to make another one anyway.",
        RemindedLately { Days: var days } => $"This household was reminded less than {days} days ago. Tick the box below to remind it anyway.",
        ReminderVoid => "This reminder was withdrawn or replaced by a newer one. Make a new one, or use the newer one.",
        ClientHasNoMail => "There is no email address on file for this client. Add one, or send the text another way.",
        ShopHasNoMail => "The shop has no email address of its own yet. Enter it under Settings → The shop.",
        AnsweredInFull => "The household has already answered for every racket; another email would ask the same again.",
        MailedAlready => "The email for this reminder is on its way or has already gone out.",
        AnswersShut => "Nothing was saved: one of these rackets has been put on the machine in the meantime. Check the bench, then note the rest.",
        MailNotGivenUp => "This email cannot be tried again: it is on its way, or its reminder was answered, stopped or withdrawn.",
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
        LeftOut.WishesSms => "wants SMS, which you send yourself",
        LeftOut.NoMail => "no email address on file",
        LeftOut.QuietMonth => "wants no reminders this month",
        LeftOut.TooSoon => $"a reminder was written less than {days} days ago",
        LeftOut.ShopHasNoMail => "the shop has no email address of its own",
        LeftOut.Waits => "its reminder is already waiting to be sent",
        _ => "no longer on file",
    };
}
