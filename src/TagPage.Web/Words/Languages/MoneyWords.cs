using System.Collections.Concurrent;
using System.Globalization;
using TagPage.Records.Shop;

namespace TagPage.Web.Words;

/// <summary>Amounts as the reader's language writes them.</summary>
public static class MoneyWords
{
    /// <summary>By currency; a shop has one, so that nobody takes its dollars for others.</summary>
    private static readonly ConcurrentDictionary<string, string> Signs = new();

    public static string Money(this Language language, long minor, ShopDetails shop) => language.Money(minor, shop.Currency);

    /// <summary>Minor units to an amount with its currency: 2450 → £24.50; in French 24,50 £.</summary>
    public static string Money(this Language language, long minor, string currency)
    {
        var (amount, sign) = (Currencies.ToAmount(minor, currency), Signs.GetOrAdd(currency, SignOf));
        var format = (NumberFormatInfo)language.Culture.NumberFormat.Clone();
        (format.CurrencyDecimalDigits, format.CurrencySymbol) = (Currencies.Places(currency), sign);
        // Letters stand apart from the number, and after it.
        return sign.All(char.IsLetter)
            ? $"{amount.ToString("N" + format.CurrencyDecimalDigits, format)}\u00A0{sign}"
            : amount.ToString("C", format);
    }

    /// <summary>The sign that its country writes, where every reader knows the letters; else the code.</summary>
    private static string SignOf(string currency)
    {
        // ISO 4217 begins a code with its country's, but for those of several countries.
        var country = currency == "EUR" ? "DE" : currency[..2];
        return Countries.All.Any(c => c.Code == country && c.Currency == currency) && new RegionInfo(country) is { CurrencySymbol: var sign } region
            && region.ISOCurrencySymbol == currency && sign.All(IsKnown) ? sign : currency;
    }

    private static bool IsKnown(char c) => char.IsAscii(c) || char.GetUnicodeCategory(c) == UnicodeCategory.CurrencySymbol;
}
