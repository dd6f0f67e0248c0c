using System.Globalization;

namespace TagPage.Web.StringingLists;

/// <summary>Currencies as amounts name them: ISO 4217 codes, and signs as the system’s locale data has them.</summary>
internal static class CurrencyText
{
    /// <summary>A sign that several currencies share, like $, speaks for each of them.</summary>
    private static readonly ILookup<string, string> Known = CultureInfo.GetCultures(CultureTypes.SpecificCultures)
        .Select(culture => new RegionInfo(culture.Name))
        .SelectMany(region => new[] { (Said: Plain(region.CurrencySymbol), Code: region.ISOCurrencySymbol), (Said: region.ISOCurrencySymbol, Code: region.ISOCurrencySymbol) })
        .Concat(new (string Said, string Code)[] { ("$", "USD"), ("£", "GBP"), ("€", "EUR"), ("¥", "JPY"), ("¥", "CNY"), ("円", "JPY"), ("元", "CNY") })
        .Distinct().ToLookup(known => known.Said, known => known.Code);

    /// <summary>Whether it can only be another currency than the shop’s.</summary>
    /// <param name="said">What stands beside an amount; empty for nothing.</param>
    /// <param name="currency">ISO 4217.</param>
    public static bool IsOther(string said, string currency) => Known[Plain(said)].ToList() is { Count: > 0 } codes && !codes.Contains(currency);

    private static string Plain(string said) => said.Trim().TrimEnd('.').ToUpperInvariant();
}
