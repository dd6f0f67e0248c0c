using TagPage.Core.Money;
using TagPage.Records.Money;
using TagPage.Records.Prepaid;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Web.Words;

/// <summary>What money is for and how it came in, and why something about it was not saved, as the shop reads it.</summary>
public static class PriceWords
{
    public static string Of(ChargeKind kind) => kind switch
    {
        ChargeKind.Whole => "restring, all in one",
        ChargeKind.Visit => "visit without stringing",
        ChargeKind.Labour => "labour",
        ChargeKind.Strings => "strings",
        ChargeKind.Mains => "mains",
        ChargeKind.Crosses => "crosses",
        ChargeKind.Grip => "grip",
        ChargeKind.Grommets => "grommets",
        ChargeKind.Rush => "rush",
        ChargeKind.Extra => "extra",
        ChargeKind.Prepaid => "paid in advance",
        _ => "price agreed",
    };

    public static string Of(PaymentMethod method) => method switch
    {
        PaymentMethod.Cash => "cash",
        PaymentMethod.Card => "card",
        PaymentMethod.Transfer => "transfer",
        _ => "before these records",
    };

    /// <summary>A line as it stands on the ticket: grip (overgrip), mains (6 m at 1.50 a metre).</summary>
    public static string Of(ChargeLine line, ShopDetails shop)
    {
        string?[] more =
        [
            line.Words.Length > 0 ? line.Words : null,
            line is { Centimetres: { } cm, MetreMinor: { } metre } ? $"{Formats.Number(cm / 100m)} m at {Formats.Money(metre, shop)} a metre" : null,
        ];
        var inBrackets = string.Join(", ", more.OfType<string>());
        return line is { Kind: ChargeKind.Extra, Words.Length: > 0 } ? line.Words : inBrackets.Length > 0 ? $"{Of(line.Kind)} ({inBrackets})" : Of(line.Kind);
    }

    /// <summary>As the price list has it: under its own name, if it has one.</summary>
    public static string Of(ExtraPrice extra) => extra.Name.Length > 0 ? extra.Name : Of(extra.Kind);

    /// <summary>Of a ticket whose strings were changed, or come from somebody else now.</summary>
    /// <param name="price">Of the ticket; null for none.</param>
    /// <param name="more">By the price list; below zero for less.</param>
    /// <param name="shop">Whose currency it is.</param>
    public static string OfStrings(long? price, long more, ShopDetails shop) =>
        $"{(price is { } stays ? $"Its price stays {Formats.Money(stays, shop)}" : "It has no price yet")}; by the price list its strings cost {Formats.Money(Math.Abs(more), shop)} {(more > 0 ? "more" : "less")} now.";

    /// <summary>What follows when the payment is taken back.</summary>
    public static string OnTakingBack(PaymentStore.Row payment) => payment switch
    {
        { Restrings: { } n } => n == 1 ? "It paid for one prepaid restring, which can no longer be used then." : $"It paid for {n} prepaid restrings, which can no longer be used then.",
        { Jobs: 0 } => "No ticket on file was paid with it.",
        { Jobs: 1 } => "Its ticket will be owed again.",
        _ => $"It paid for {payment.Jobs} tickets, which will be owed again.",
    };

    internal static string? Of(Refusal why) => why switch
    {
        PaidAlready paid => $"Ticket {paid.Ticket} was already paid on {Formats.Day(paid.On)}. Nothing was changed.",
        PaidInFuture { Today: var today } => $"This day is in the future; today is {Formats.Day(today)}.",
        PaidLongAgo => "Check the year.",
        PriceMissing => "This ticket has no price yet. Set it under “Change the price” first.",
        MoreThanOpen more => $"Only {Formats.Money(more.OpenMinor, more.Currency)} is still to be paid. If they pay more than that, enter the payment on their account instead.",
        AmountMissing => "Enter an amount above zero.",
        CreditTooSmall small => $"There is {Formats.Money(small.FreeMinor, small.Currency)} in credit, which is less than what is still to be paid. Choose another way to pay, or pay a part from credit.",
        PrepaidUsed { Count: var used } => $"{(used == 1 ? "One restring" : $"{used} restrings")} that this payment bought in advance {(used == 1 ? "is" : "are")} used already. Give that back on the ticket first.",
        BoughtInFuture => "This day is in the future. Enter the day it was paid.",
        BoughtLongAgo => "Check the year.",
        RestringsUnlikely { Most: var most } => $"Enter how many restrings: 1 to {most}.",
        PrepaidAmountMissing => "Enter an amount above zero.",
        NoPrepaidLeft => "No restring that was paid in advance is left.",
        PrepaidOnItAlready { Ticket: var ticket } => $"A prepaid restring is used for ticket {ticket} already, so nothing was changed.",
        NothingCovered => "Nothing of this ticket’s price is what the prepaid restrings cover, or it is paid already.",
        NoPrepaidOnIt { Ticket: var ticket } => $"No prepaid restring is used for ticket {ticket}, so nothing was changed.",
        TakenBackAlready => "This payment was already taken back. Nothing was changed.",
        NothingToBill => "Nothing is left to bill.",
        CancelledAlready => "This bill is cancelled, or cancels another one. Nothing was changed.",
        BillUnaddressed => "No email can be sent: whoever pays, or the shop, has no email address on file. Add it first.",
        NothingToLay => "There is no credit, or nothing is owed that it could pay.",
        PriceImpossible => "The lines add up to less than zero, or to more than a price can be. Check the amounts.",
        PaymentsOnIt => "Something was paid on this ticket, and payments stay on record. Cancel the ticket instead.",
        _ => null,
    };

    internal static string Of(PaidPriceChanges odd)
    {
        string Money(long minor) => Formats.Money(minor, odd.Currency);
        var left = odd.IsMinor - odd.LaidMinor;
        return $"{Money(odd.LaidMinor)} of ticket {odd.Ticket} is paid, and its price would go from {Money(odd.WasMinor)} to {Money(odd.IsMinor)}. "
            + (left > 0 ? $"{Money(left)} would still be owed." : left < 0 ? $"{Money(-left)} would be in credit." : "Nothing more would be owed.")
            + " The change stays on record. Correct it, or tick below to make it.";
    }
}
