using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Records.Stops;
using TagPage.Records.Storage;

namespace TagPage.Web.Words;

/// <summary>Where rackets are, as the shop reads it.</summary>
public static class StopWords
{
    public const string OwnBench = "your bench";

    /// <summary>On the bench’s row: where it is while it is elsewhere, else where it goes; null for a ticket that has to do with the bench alone.</summary>
    public static string? OnRow(JobRow job) => job switch
    {
        { Expected: true, LeftAt: { } left } => $"to be left at {left}",
        { IsToFetch: true } => $"to be fetched from {job.LeftAt}",
        { IsAt: { } at } => $"waits at {at}",
        { IsToBring: true } => $"to be brought to {job.CollectAt}",
        { IsOpen: true, CollectAt: { } collect } => $"goes to {collect}",
        _ => null,
    };

    /// <summary>On the ticket: where the racket is now; null once it is the client’s again.</summary>
    public static string? Now(JobRow job) => job switch
    {
        { Expected: true } or { State: JobState.Collected or JobState.Cancelled } => null,
        { IsAt: { } at } => at,
        _ => "with you",
    };

    public static string? Of(Refusal why) => why switch
    {
        StopNameTaken => "Another stop has this name, and the round would not tell them apart. Choose another one.",
        StopHasRackets { Count: var count } => count == 1 ? "One racket is there or is to go there. Bring its ticket to an end first." : $"{count} rackets are there or are to go there. Bring their tickets to an end first.",
        StopUnknown => "Choose a stop that is in use.",
        BroughtAlready { Stop: var stop } => $"The racket is at {stop} already. If it is not, take that back on the round first.",
        RoundMovedOn { Ticket: var ticket } => $"Ticket {ticket} has moved on meanwhile, so nothing was changed. Look at the list again.",
        _ => null,
    };
}
