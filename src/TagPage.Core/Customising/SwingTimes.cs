namespace TagPage.Core.Customising;

/// <summary>The period of a pendulum from a stop-watch, with what the spread of the times leaves open.</summary>
/// <param name="PeriodS">Seconds for one swing there and back, and its standard error.</param>
/// <param name="Swings">How many swings were timed.</param>
/// <param name="Missed">How many swings went by without a tap.</param>
/// <param name="Doubled">How many taps came too soon to be a swing, and were left out.</param>
public sealed record SwingTimes(Uncertain PeriodS, int Swings, int Missed, int Doubled)
{
    /// <summary>Fewer taps tell nothing about their spread.</summary>
    public const int FewestTaps = 4;

    /// <summary>How far off a start or a stop by hand is, in seconds. Common practice, no source.</summary>
    public const double HandS = 0.1;

    /// <summary>One tap a swing, always at the same turn. The period is the slope of a straight line through the taps.</summary>
    /// <param name="tapsS">Seconds on any clock, rising.</param>
    /// <returns>Null where there are too few to tell.</returns>
    public static SwingTimes? OfTaps(IReadOnlyList<double> tapsS)
    {
        if (tapsS.Count < FewestTaps || Typical(tapsS) is not (> 0 and var typical))
            return null;
        var (counted, missed, doubled) = Count(tapsS, typical);
        return counted.Count < FewestTaps ? null : new(Slope(counted), counted[^1].Swing, missed, doubled);
    }

    /// <summary>Rounds of the same number of swings, each timed from start to stop.</summary>
    /// <param name="swings">In each round, 1 or more.</param>
    /// <param name="roundsS">Seconds of each round, one or more.</param>
    public static SwingTimes OfRounds(int swings, IReadOnlyList<double> roundsS)
    {
        var mean = roundsS.Average();
        var spread = roundsS.Count < 2 ? 0 : Math.Sqrt(roundsS.Sum(r => (r - mean) * (r - mean)) / (roundsS.Count - 1));
        // Two or three rounds may agree by luck: a hand is never better than a hand.
        var off = Math.Max(spread, Math.Sqrt(2) * HandS) / Math.Sqrt(roundsS.Count);
        return new(new(mean / swings, off / swings), swings * roundsS.Count, 0, 0);
    }

    private static double Typical(IReadOnlyList<double> taps)
    {
        double[] gaps = [.. taps.Zip(taps.Skip(1), (a, b) => b - a).Order()];
        return gaps[gaps.Length / 2];
    }

    private static (List<(int Swing, double At)> Counted, int Missed, int Doubled) Count(IReadOnlyList<double> taps, double typical)
    {
        List<(int Swing, double At)> counted = [(0, taps[0])];
        var (missed, doubled) = (0, 0);
        foreach (var tap in taps.Skip(1))
        {
            var swings = (int)Math.Round((tap - counted[^1].At) / typical);
            if (swings < 1)
                doubled++;
            else
                counted.Add((counted[^1].Swing + swings, tap));
            missed += Math.Max(0, swings - 1);
        }
        return (counted, missed, doubled);
    }

    private static Uncertain Slope(List<(int Swing, double At)> taps)
    {
        var (meanX, meanY) = (taps.Average(t => t.Swing), taps.Average(t => t.At));
        var spread = taps.Sum(t => (t.Swing - meanX) * (t.Swing - meanX));
        var slope = taps.Sum(t => (t.Swing - meanX) * (t.At - meanY)) / spread;
        var left = taps.Sum(t => Math.Pow(t.At - meanY - (slope * (t.Swing - meanX)), 2));
        return new(slope, Math.Sqrt(left / (taps.Count - 2) / spread));
    }
}
