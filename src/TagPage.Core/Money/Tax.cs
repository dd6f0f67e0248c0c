namespace TagPage.Core.Money;

/// <summary>
/// Tax within prices that include it. It is worked out once for each rate of a bill, from the sum of that rate's amounts,
/// and rounded to the minor unit with halves away from zero: never line by line, where the roundings would add up.
/// </summary>
public static class Tax
{
    /// <summary>Basis points in the whole: 2000 stand for 20 %.</summary>
    public const int Whole = 10_000;

    /// <summary>The tax within an amount that includes it; below zero for an amount below zero.</summary>
    /// <param name="gross">In minor units.</param>
    /// <param name="basisPoints">The rate on the amount without tax, 0 to 10,000.</param>
    public static long Within(long gross, int basisPoints)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(basisPoints);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(basisPoints, Whole);
        return Rounding.HalfAway((Int128)gross * basisPoints, Whole + basisPoints);
    }

    /// <summary>The amounts of a bill summed by rate, the highest rate first, each with its tax.</summary>
    public static IReadOnlyList<TaxPart> Of(IEnumerable<(long Gross, int BasisPoints)> amounts) =>
    [
        .. amounts.GroupBy(a => a.BasisPoints, a => a.Gross)
            .Select(rate => new TaxPart(rate.Key, rate.Sum(), Within(rate.Sum(), rate.Key)))
            .OrderByDescending(part => part.BasisPoints),
    ];
}

/// <summary>What a bill charges at one rate.</summary>
/// <param name="BasisPoints">The rate.</param>
/// <param name="Gross">With tax, in minor units.</param>
/// <param name="Amount">The tax within it.</param>
public sealed record TaxPart(int BasisPoints, long Gross, long Amount)
{
    /// <summary>Without tax; with the tax it gives the gross amount to the last unit.</summary>
    public long Net => Gross - Amount;
}
