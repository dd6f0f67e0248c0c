namespace TagPage.Records.Shop;

/// <summary>The currencies in use, and their minor units after ISO 4217 where these are not two.</summary>
public static class Currencies
{
    /// <summary>ISO 4217 codes of the countries' present currencies, as the system's locale data has them.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Countries.All.Select(c => c.Currency).Where(c => c.Length == 3).Distinct().Order(StringComparer.Ordinal)];

    public static string? OfCountry(string? country) => Countries.All.FirstOrDefault(c => c.Code == country).Currency;

    private static readonly string[] None = ["BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "VND", "VUV", "XAF", "XOF", "XPF"];
    private static readonly string[] Three = ["BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"];

    public static int Places(string currency) => None.Contains(currency) ? 0 : Three.Contains(currency) ? 3 : 2;

    /// <summary>The highest possible price, in minor units.</summary>
    public const long MostMinor = 100_000_000;

    /// <summary>
    /// An amount in minor units: 24.50 → 2450. Null where it is below zero, above <see cref="MostMinor"/> or finer
    /// than the currency goes.
    /// </summary>
    public static long? ToMinor(decimal amount, string currency)
    {
        if (amount is < 0 or > MostMinor)
            return null;
        var minor = amount * Scale(currency);
        return minor <= MostMinor && minor == decimal.Truncate(minor) ? (long)minor : null;
    }

    public static decimal ToAmount(long minor, string currency) => minor / Scale(currency);

    private static decimal Scale(string currency) => Places(currency) switch { 0 => 1, 3 => 1000, _ => 100 };
}
