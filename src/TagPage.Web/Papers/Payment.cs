using System.Globalization;
using TagPage.Core.Money;
using TagPage.Labels.Papers;
using TagPage.Records.Money;
using TagPage.Records.Shop;

namespace TagPage.Web.Papers;

/// <summary>Why there is no square to pay with.</summary>
public enum NoSquare { NothingToPay, NoAccount, TooMuch, Currency, ForeignAccount, Address }

/// <summary>The square that pays, where there is one: an account, and a currency in which phones read it.</summary>
public static class Payment
{
    private static readonly string[] Swiss = ["CHF", "EUR"];

    /// <summary>As the shop stands today.</summary>
    public static BillSender Payee(ShopDetails shop, PriceList list) => new()
    {
        Name = shop.Name,
        Street = shop.Street,
        Town = shop.Town,
        Country = shop.Country,
        Iban = list.Iban,
        AccountName = list.AccountName.Length > 0 ? list.AccountName : shop.Name,
    };

    /// <summary>A Swiss QR-bill’s where the account is one and the address is whole, else that of a transfer in euros.</summary>
    /// <param name="payee">Whose account it is, with the address.</param>
    /// <param name="currency">Of the amount.</param>
    /// <param name="minor">What is to be paid; nothing where it is not above zero.</param>
    /// <param name="text">What it is for.</param>
    /// <param name="reference">The same for an account that takes nothing without a reference.</param>
    public static TransferQr? Square(BillSender payee, string currency, long minor, string text, string reference)
    {
        if (Missing(payee, currency, minor) is not null)
            return null;
        return PayeeOf(payee) is { } swiss ? TransferQr.OfSwiss(swiss, currency, minor, text, reference) : TransferQr.Of(payee.Iban!, payee.AccountName, minor, text);
    }

    /// <summary>Null where there is a square.</summary>
    public static NoSquare? Missing(BillSender payee, string currency, long minor) => payee switch
    {
        _ when minor < TransferQr.LeastCents => NoSquare.NothingToPay,
        { Iban: null } => NoSquare.NoAccount,
        _ when minor > TransferQr.MostCents => NoSquare.TooMuch,
        _ when !Swiss.Contains(currency) => NoSquare.Currency,
        _ when PayeeOf(payee) is not null => null,
        { Iban: { } iban } when SwissPayee.IsAccount(iban) => currency == "CHF" || SwissPayee.IsQrIban(iban) ? NoSquare.Address : null,
        _ => currency == "CHF" ? NoSquare.ForeignAccount : null,
    };

    private static SwissPayee? PayeeOf(BillSender payee) => SwissPayee.Of(payee.Iban!, payee.AccountName, payee.Street, payee.Town, payee.Country);

    /// <summary>What a transfer names: the number, or for an account that demands one the reference.</summary>
    public static string Names(BillSender payee, string number, string reference) =>
        payee.Iban is { } iban && SwissPayee.IsQrIban(iban) ? QrReference.Shown(reference) : number;

    /// <summary>Of a bill by its number, with a 1 before it; of tickets by the first of them, with a 2.</summary>
    public static string ReferenceOf(BillRow bill) => QrReference.Of(string.Create(CultureInfo.InvariantCulture, $"1{bill.Year}{bill.Number:000000}"));

    /// <param name="tickets">Numbers, with commas.</param>
    public static string ReferenceOf(string tickets) => QrReference.Of("2" + string.Concat(tickets.TakeWhile(char.IsAsciiDigit)));
}
