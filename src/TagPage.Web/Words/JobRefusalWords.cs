using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Jobs;
using TagPage.Records.Readings;
using TagPage.Records.Storage;

namespace TagPage.Web.Words;

/// <summary>Why a job or a reading was not saved, as the shop reads it.</summary>
internal static class JobRefusalWords
{
    public static string? Of(Refusal why) => OfMoves(why) ?? OfDays(why) ?? OfOrder(why) ?? OfReadings(why);

    private static string? OfMoves(Refusal why) => why switch
    {
        JobMovedOn moved => $"Ticket {moved.Ticket} is {EnglishNames.Of(moved.State)} now, so this was not done. Nothing was changed.",
        PaidAlready { On: { } on } paid => $"Ticket {paid.Ticket} is marked as paid on {Formats.Day(on)} already. Nothing was changed.",
        PaidAlready paid => $"Ticket {paid.Ticket} is marked as not paid already. Nothing was changed.",
        StringsEnded ended => $"These strings are noted as {EnglishNames.Of(ended.How)} on {Formats.Day(ended.On)}. Take that away under “Change the ticket” first.",
        TicketCancelled => "This ticket is cancelled. Take it back to waiting first.",
        NotReady => "This racket is not waiting to be collected.",
        ToldReadyAlready => "The client was told already.",
        NoMailAddress => "No mail can go: the client or the shop has no mail address on file.",
        _ => null,
    };

    private static string? OfDays(Refusal why) => why switch
    {
        DayToCome { Today: var today } => $"This day is still to come; today is {Formats.Day(today)}.",
        YearUnlikely => "Look at the year again.",
        PromisedBeforeIn { ReceivedOn: var received } => $"The promised day is before the day it came in, {Formats.Day(received)}.",
        PromisedTooLate => "That is more than a year after it came in. Look at the year again.",
        StrungBeforeIn { ReceivedOn: var received } => $"It cannot be strung before it came in, {Formats.Day(received)}.",
        CollectedUnstrung => "Write the day of stringing too, since it was collected.",
        CollectedBeforeStrung { StrungOn: var strung } => $"It cannot be collected before it was strung, {Formats.Day(strung)}.",
        EndedUnstrung => "Write the day of stringing too, since these strings have ended.",
        EndsBeforeStrung { StrungOn: var strung } => $"Strings cannot end before they were strung, {Formats.Day(strung)}.",
        EndWithoutDay => "Write the day these strings ended.",
        EndWithoutReason => "Choose how these strings ended; “unknown” is an answer too.",
        _ => null,
    };

    private static string? OfOrder(Refusal why) => why switch
    {
        StringUnknown => "Choose a string from the list.",
        StringIsOther other => $"{other.Name} in this gauge is in the catalogue already, as {EnglishNames.Of(other.Material)}.",
        MainsMissing => "Choose the string of the mains, or write a new one below.",
        NewStringUnnamed => "Write the new string's name.",
        NewStringOfNothing => "Choose what the new string is made of.",
        NewStringGaugeless => "Write the new string's diameter in mm, like 1.25.",
        TensionImpossible { Unit: var unit } =>
            $"No machine pulls that. Write a tension between {In(TensionCheck.MinLb, unit)} and {In(TensionCheck.MaxLb, unit)} {EnglishNames.Of(unit)}.",
        PriceUnread unread => $"Write the price in {unread.Shop.Currency} like {Formats.Amount(2450, unread.Shop)}.",
        _ => null,
    };

    internal static string In(decimal lb, TensionUnit unit) => Formats.Number(new Tension(lb, TensionUnit.Lb).In(unit), 1);

    private static string? OfReadings(Refusal why) => why switch
    {
        InstrumentInUse => "Readings were taken on it already. Add another instrument for the other scale.",
        InstrumentNameTaken => "An instrument has this name already.",
        InstrumentUnknown => "Choose an instrument of the list.",
        InstrumentMissing => "Choose the instrument of the reading.",
        ReadingUnlikely => "Write the number the instrument shows, above 0 and below 5000.",
        _ => null,
    };
}
