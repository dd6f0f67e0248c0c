namespace TagPage.Core.Money;

/// <summary>
/// Amounts as whole minor units of a currency, 24.50 GBP as 2450. How many decimals a currency has is its exponent in
/// ISO 4217; only those that do not have two are listed.
/// </summary>
public static class MinorUnits
{
    private static readonly string[] None = ["BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "VND", "VUV", "XAF", "XOF", "XPF"];
    private static readonly string[] Three = ["BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"];

    /// <summary>The highest possible amount, in minor units.</summary>
    public const long Most = 100_000_000;

    public static int Places(string currency) => None.Contains(currency) ? 0 : Three.Contains(currency) ? 3 : 2;

    /// <summary>
    /// An amount in minor units: 24.50 → 2450. Null where it is below zero, above <see cref="Most"/> or finer than the currency goes.
    /// </summary>
    public static long? Of(decimal amount, string currency) => amount < 0 ? null : OfSigned(amount, currency);

    /// <summary>The same for an amount that may be below zero, as a discount is.</summary>
    public static long? OfSigned(decimal amount, string currency)
    {
        if (amount is < -Most or > Most)
            return null;
        var minor = amount * Scale(currency);
        return minor is >= -Most and <= Most && minor == decimal.Truncate(minor) ? (long)minor : null;
    }

    public static decimal ToAmount(long minor, string currency) => minor / Scale(currency);

    private static decimal Scale(string currency) => Places(currency) switch { 0 => 1, 3 => 1000, _ => 100 };
}
