using TagPage.Core.Jobs;
using TagPage.Records.Events;
using TagPage.Records.Storage;

namespace TagPage.Web.Words;

/// <summary>Why something at an event's desk was not done, as the shop and its helpers read it.</summary>
internal static class EventRefusalWords
{
    public static string? Of(Refusal why) => OfSetUp(why) ?? OfRackets(why);

    private static string? OfSetUp(Refusal why) => why switch
    {
        EventDaysUnfit { Most: var most } => $"The last day is before the first, or more than {most} days after it. Correct one of them.",
        EventPriceUnread unread => $"Enter the price in {unread.Shop.Currency} like {Formats.Amount(2450, unread.Shop)}.",
        EventIsClosed => "This event is closed. Open it again on its page in the shop first.",
        RacketsStillThere { Numbers: var numbers } => $"Still at the desk: {Numbers(numbers)}. Hand them out or withdraw them first.",
        WorkHoursUnread { Field: nameof(TechnicianEntry.Hours) } => "Enter times like 9:00-12:30, 13:00-18:00.",
        WorkHoursUnread => "Enter times like 9:00-12:30, 13:00-18:00, or off for a day off.",
        NothingToPay => "Everything that is strung is paid.",
        ShiftUnlikely { Most: var most } => $"Enter minutes between 1 and {most}, or with a minus sign for earlier.",
        _ => null,
    };

    private static string? OfRackets(Refusal why) => why switch
    {
        EntryMovedOn moved => Of(moved),
        StillOnMachine { Number: var number, By: var by, First: var first } => $"Number {first} is still on the machine of {by}. Say below whether number {number} goes on as well.",
        TechnicianNotThere => "This technician is away. Choose somebody who is there.",
        AtDeskAlready { Number: var number } => $"This racket is already at the desk: number {number}.",
        OpenInShop { Ticket: var ticket } => $"Ticket {ticket} of this racket is still open in the shop. Finish or cancel it first.",
        NoHoursLeft => "It cannot be strung in the hours that are left. Add hours or a technician, or take it in for the shop.",
        MatchOutOfReach { Number: var number } => $"Number {number} can no longer be ready for its match. Its promise stays as it is.",
        NobodyNamed => "Enter the player’s name.",
        NeededInPast { NeededBy: var need } => $"{DeskWords.Clock(need)} has passed. Enter a later time or another day, or leave it empty.",
        NeededBeforeStrung { NeededBy: var need, NotBefore: var fresh } => $"It is not to be strung before {DeskWords.Clock(fresh)}, so it cannot be ready by {DeskWords.Clock(need)}. Correct one of the two.",
        NotAtTheEvent => "The event is not on that day. Choose one of its days.",
        _ => null,
    };

    private static string Of(EntryMovedOn moved) => moved switch
    {
        { State: JobState.OnMachine, By.Length: > 0 } => $"Somebody was quicker: {moved.By} has number {moved.Number} on the machine.",
        { State: JobState.Waiting } => $"Number {moved.Number} is waiting again, so nothing was changed.",
        _ => $"Number {moved.Number} is now {DeskWords.Of(moved.State)}, so nothing was changed.",
    };

    /// <summary>Number 7; numbers 7, 9.</summary>
    public static string Listed(IReadOnlyList<int> numbers) => (numbers.Count == 1 ? "Number " : "Numbers ") + Numbers(numbers);

    private static string Numbers(IReadOnlyList<int> numbers) => numbers.Count <= 12 ? string.Join(", ", numbers) : $"{string.Join(", ", numbers.Take(12))} and {numbers.Count - 12} more";
}
