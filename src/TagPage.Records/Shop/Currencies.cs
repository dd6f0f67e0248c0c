using TagPage.Core.Money;

namespace TagPage.Records.Shop;

/// <summary>The currencies in use, and amounts in their minor units.</summary>
public static class Currencies
{
    /// <summary>ISO 4217 codes of the countries' present currencies, as the system's locale data has them.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Countries.All.Select(c => c.Currency).Where(c => c.Length == 3).Distinct().Order(StringComparer.Ordinal)];

    public static string? OfCountry(string? country) => Countries.All.FirstOrDefault(c => c.Code == country).Currency;

    public static int Places(string currency) => MinorUnits.Places(currency);

    /// <inheritdoc cref="MinorUnits.Of"/>
    public static long? ToMinor(decimal amount, string currency) => MinorUnits.Of(amount, currency);

    public static decimal ToAmount(long minor, string currency) => MinorUnits.ToAmount(minor, currency);
}
