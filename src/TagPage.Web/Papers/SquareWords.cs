using TagPage.Records.Money;

namespace TagPage.Web.Papers;

/// <summary>Why there is no square to pay with, as the shop reads it.</summary>
public static class SquareWords
{
    /// <summary>Of a bill, which stays as it was written; null where it has one.</summary>
    public static string? Of(BillRow bill) =>
        bill is not { CancelsId: null, CancelledById: null } ? "It has no square to pay with, because it is cancelled or cancels another one."
        : Payment.Missing(bill.Sender, bill.Currency, bill.ToPayMinor) is { } why ? $"It has no square to pay with: {Because(why, bill.Currency)}" : null;

    /// <summary>Of bills to come; null where they have one, and where no account is entered.</summary>
    public static string? Of(BillSender payee, string currency) =>
        payee.Iban is not null && Payment.Missing(payee, currency, 1) is { } why ? $"Bills have no square to pay with: {Because(why, currency)}" : null;

    private static string Because(NoSquare why, string currency) => why switch
    {
        NoSquare.NothingToPay => "nothing is left to pay.",
        NoSquare.NoAccount => "no account was entered when it was written. For bills to come, enter one under Settings → Prices and payment.",
        NoSquare.TooMuch => "the amount is more than a bank’s app takes.",
        NoSquare.Currency => $"banks’ apps read one for euros and Swiss francs only, and the amount is in {currency}.",
        NoSquare.ForeignAccount => "francs are paid with one into accounts in Switzerland and Liechtenstein only.",
        _ => "for a Swiss account the shop’s address needs a postcode. Enter the town with it under Settings → The shop, like “8004 Zürich”.",
    };
}
