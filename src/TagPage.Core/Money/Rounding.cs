namespace TagPage.Core.Money;

internal static class Rounding
{
    /// <summary>The quotient as the nearest whole number, halves away from zero.</summary>
    /// <param name="dividend">Any.</param>
    /// <param name="divisor">Above zero.</param>
    public static long HalfAway(Int128 dividend, long divisor)
    {
        var (size, twice) = (Int128.Abs(dividend), (Int128)divisor * 2);
        var rounded = (size * 2 + divisor) / twice;
        return (long)(dividend < 0 ? -rounded : rounded);
    }
}
