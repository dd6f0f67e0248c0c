using TagPage.Labels.Papers;
using TagPage.Records.Money;
using TagPage.Records.Shop;

namespace TagPage.Web.Papers;

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
    public static TransferQr? Square(BillSender payee, string currency, long minor, string text)
    {
        if (payee.Iban is not { } iban || minor is < TransferQr.LeastCents or > TransferQr.MostCents)
            return null;
        if (Swiss.Contains(currency) && SwissPayee.Of(iban, payee.AccountName, payee.Street, payee.Town, payee.Country) is { } swiss)
            return TransferQr.OfSwiss(swiss, currency, minor, text);
        return currency == "EUR" && !SwissPayee.IsQrIban(iban) ? TransferQr.Of(iban, payee.AccountName, minor, text) : null;
    }
}
