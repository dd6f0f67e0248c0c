using TagPage.Records.Loans;
using TagPage.Records.Storage;

namespace TagPage.Web.Words;

/// <summary>Rackets of the shop’s own, as the shop reads of them.</summary>
public static class LoanWords
{
    /// <summary>"due back on 3 Dec 2026", "▲ overdue since 3 Dec 2026".</summary>
    public static string Due(DateOnly? dueOn, DateOnly today) =>
        dueOn is not { } due ? "no day agreed" : due < today ? $"▲ overdue since {Formats.Day(due)}" : $"due back on {Formats.Day(due)}";

    public static string? Of(Refusal why) => why switch
    {
        LoanNameTaken => "Another racket of yours has this name, and nobody could tell them apart. Choose another one.",
        LentNow { Client: var client } => $"{client} has it. Note that it is back first.",
        LoanRacketUnknown => "Choose one of your own rackets.",
        LentAlready { Racket: var racket, Client: var client } => $"{client} has {racket} already, so nothing was changed.",
        LentThen { Racket: var racket, Client: var client, BackOn: var back } => $"{client} had {racket} until {Formats.Day(back)}. It can be lent from that day on.",
        LentInFuture => "This day is in the future. Enter the day it was lent.",
        DueBeforeLent => "This is before the day it was lent. Enter a later day, or leave it empty.",
        BackInFuture => "This day is in the future. Enter the day it came back.",
        BackBeforeLent { LentOn: var lent } => $"It was lent on {Formats.Day(lent)}. Enter that day or a later one.",
        GivenBackAlready { On: var on } => $"It is noted as back since {Formats.Day(on)}, so nothing was changed.",
        _ => null,
    };
}
