namespace TagPage.Core.Forecast;

/// <summary>
/// String life drawn as upright strokes: which are still good. They are used up from the outside in, evenly on both
/// sides; an odd one goes on the right first. The good ones are rounded to the nearest whole, but while anything is
/// left at least one stays good.
/// </summary>
public static class StringLife
{
    /// <summary>Most strokes that are drawn.</summary>
    public const int MostStrokes = 60;

    /// <summary>One entry a stroke, left to right, true where it is good.</summary>
    /// <param name="strokes">How many, 1 to <see cref="MostStrokes"/>; the racket's number of mains.</param>
    /// <param name="lifeLeft">0 to 1; what lies outside counts as the nearer end.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number of strokes is out of range.</exception>
    public static IReadOnlyList<bool> Good(int strokes, double lifeLeft)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(strokes, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(strokes, MostStrokes);
        var good = CountGood(strokes, lifeLeft);
        var first = (strokes - good) / 2;
        return [.. Enumerable.Range(0, strokes).Select(i => i >= first && i < first + good)];
    }

    private static int CountGood(int strokes, double lifeLeft)
    {
        if (!(lifeLeft > 0))
            return 0;
        var nearest = Math.Round(Math.Min(1, lifeLeft) * strokes, MidpointRounding.AwayFromZero);
        return Math.Max(1, (int)nearest);
    }
}
