using System.Globalization;
using TagPage.Records.Shop;

namespace TagPage.Web.Words;

/// <summary>Amounts as the reader's language writes them.</summary>
public static class MoneyWords
{
    /// <summary>Minor units to an amount with its currency: 2450 → £24.50; in French 24,50 £.</summary>
    public static string Money(this Language language, long minor, ShopDetails shop)
    {
        var (amount, sign) = (Currencies.ToAmount(minor, shop.Currency), Sign(shop));
        var format = (NumberFormatInfo)language.Culture.NumberFormat.Clone();
        format.CurrencyDecimalDigits = Currencies.Places(shop.Currency);
        format.CurrencySymbol = sign;
        // Letters stand apart from the number, and after it.
        return sign.All(char.IsLetter)
            ? $"{amount.ToString("N" + format.CurrencyDecimalDigits, format)}\u00A0{sign}"
            : amount.ToString("C", format);
    }

    /// <summary>The sign that the shop's country writes, where the currency is its own and every reader knows the letters; else the code.</summary>
    private static string Sign(ShopDetails shop) =>
        Countries.All.Any(c => c.Code == shop.Country) && new RegionInfo(shop.Country) is var region && region.ISOCurrencySymbol == shop.Currency && region.CurrencySymbol.All(IsKnown)
            ? region.CurrencySymbol
            : shop.Currency;

    private static bool IsKnown(char c) => char.IsAscii(c) || char.GetUnicodeCategory(c) == UnicodeCategory.CurrencySymbol;
}
