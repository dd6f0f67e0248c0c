using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Condition;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;
using TagPage.Records.Visits;

namespace TagPage.Web.Words;

/// <summary>Why a job was not saved, as the shop reads it.</summary>
internal static class JobRefusalWords
{
    public static string? Of(Refusal why) => OfMoves(why) ?? OfVisits(why) ?? OfMistakes(why) ?? OfDays(why) ?? OfOrder(why);

    private static string? OfMoves(Refusal why) => why switch
    {
        JobMovedOn moved => $"Ticket {moved.Ticket} is now {EnglishNames.Of(moved.State, moved.IsVisit)}, so nothing was changed.",
        StringsEnded ended => $"These strings are noted as {EnglishNames.Of(ended.How)} on {Formats.Day(ended.On)}. Remove that under “Change the ticket” first.",
        TicketCancelled => "This ticket is cancelled. Take it back to waiting first.",
        NotReady => "This racket is not waiting to be collected.",
        ToldReadyAlready => "The client has already been told.",
        NoMailAddress => "No email can be sent: the client or the shop has no email address on file. Add it first.",
        NoRacketChosen => "Tick at least one racket.",
        TooManyPhotos { Room: 0, Most: var most } => $"There are {most} photos on this ticket, and that is as many as it can hold. Remove one first.",
        TooManyPhotos { Room: var room, Most: var most } => $"A ticket holds up to {most} photos. Send {(room == most ? $"up to {most}" : room == 1 ? "one more" : $"up to {room} more")}.",
        NotAnnounced => "No ticket waits for this racket to be brought any more. Open the page again.",
        _ => null,
    };

    private static string? OfVisits(Refusal why) => why switch
    {
        VisitInFuture => "This day is in the future. Enter the day it was done.",
        DoneOutOfOrder { ReceivedOn: var came, CollectedOn: { } collected } => $"Enter a day from {Formats.Day(came)}, when it came in, to {Formats.Day(collected)}, when it was collected.",
        DoneOutOfOrder { ReceivedOn: var came } => $"It came in on {Formats.Day(came)}. Enter that day or a later one.",
        DoneWithoutDay => "Enter the day it was done.",
        NothingDone => "Tick what is to be done, or was.",
        OtherWorkUnsaid => "Say what the other work was.",
        VisitPriceUnlikely => "Enter a price like 24.50, or leave it empty.",
        VisitInTheBooks => "Money came in for this visit, or it is on a bill, so it stays. Change its price if it was wrong.",
        _ => null,
    };

    private static string? OfMistakes(Refusal why) => why switch
    {
        SameRacket => "This ticket is already for that racket. Choose another one.",
        ClientSpokeOfIt { Client: var client } =>
            $"{client} asked for this ticket or said how it felt, and nobody else may read that. Choose a racket of theirs, or cancel this ticket and open a new one.",
        InItThen { Ticket: var ticket, StrungOn: var on } =>
            $"Ticket {ticket}, strung on {Formats.Day(on)}, was in that racket at the same time. Correct the days of one of them first.",
        StringsWentIn { StrungOn: var on } => $"These strings went in on {Formats.Day(on)} and are part of the racket’s history. If they never did, go one step back first.",
        ReadingsOnIt => "There is a reading on this ticket. Clear it under “Change the ticket” first.",
        PhotosOnIt => "There are photos of the racket on this ticket. Remove them first.",
        PaidFor { On: var on } => $"This ticket was paid on {Formats.Day(on)}. Take the payment back first.",
        ClientAskedFor { Client: var client } => $"{client} asked for it, and reads on their own page what becomes of it. Cancel it instead.",
        _ => null,
    };

    private static string? OfDays(Refusal why) => why switch
    {
        DayToCome { Today: var today } => $"This day is in the future; today is {Formats.Day(today)}.",
        YearUnlikely => "Check the year.",
        PromisedBeforeIn { ReceivedOn: var received } => $"The promised day is before the day it came in, {Formats.Day(received)}.",
        PromisedTooLate { ReceivedOn: var received, Promised: var promised } =>
            $"It came in on {Formats.Day(received)} and is promised for {Formats.Day(promised)}, more than a year later. Check both years.",
        StrungBeforeIn { ReceivedOn: var received } => $"Enter a day on or after the day it came in, {Formats.Day(received)}.",
        CollectedUnstrung => "Enter the day of stringing too, since it was collected.",
        CollectedBeforeStrung { StrungOn: var strung } => $"Enter a day on or after the day it became ready, {Formats.Day(strung)}.",
        EndedUnstrung => "Enter the day of stringing too, since these strings have ended.",
        StrungOutOfOrder { Ticket: var ticket, On: var on } =>
            $"Ticket {ticket} was strung on {Formats.Day(on)}, and this day would change which strings came first. If that ticket’s day is wrong, correct it first.",
        EndsBeforeStrung { StrungOn: var strung } => $"Enter a day on or after the day they were strung, {Formats.Day(strung)}.",
        EndWithoutDay => "Enter the day these strings ended.",
        EndWithoutReason => "Choose how these strings ended; “unknown” is an answer too.",
        _ => null,
    };

    private static string? OfOrder(Refusal why) => why switch
    {
        StringUnknown => "Choose a string from the list.",
        StringIsOther other => $"{other.Name} in this gauge is already in the catalogue as {EnglishNames.Of(other.Material)}.",
        MainsMissing => "Choose the string of the mains, or write a new one below.",
        OnePieceOfTwo => "One piece is one string. Choose two pieces, or the mains’ string for the crosses too.",
        NewStringUnnamed => "Enter the new string’s name.",
        NewStringOfNothing => "Choose what the new string is made of.",
        NewStringGaugeless => "Enter the new string’s diameter in mm, like 1.25.",
        TensionImpossible { Unit: var unit } =>
            $"No machine pulls that. Enter a tension between {In(TensionCheck.MinLb, unit)} and {In(TensionCheck.MaxLb, unit)} {EnglishNames.Of(unit)}.",
        PriceUnread unread => $"Enter the price in {unread.Shop.Currency} like {Formats.Amount(2450, unread.Shop)}.",
        _ => null,
    };

    internal static string In(decimal lb, TensionUnit unit) => Formats.Number(new Tension(lb, TensionUnit.Lb).In(unit), 1);
}
