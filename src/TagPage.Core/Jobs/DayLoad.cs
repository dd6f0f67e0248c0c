namespace TagPage.Core.Jobs;

/// <summary>How much of what is promised for a day still fits into it, strung one after the other by one pair of hands.</summary>
public sealed record DayLoad
{
    /// <summary>Rackets that are promised.</summary>
    public int Promised { get; private init; }

    /// <summary>How many of them, in their order, come off the machine before the day ends.</summary>
    public int Fit { get; private init; }

    /// <summary>Minutes of work on all of them.</summary>
    public int Needed { get; private init; }

    /// <summary>Minutes of the day that are left.</summary>
    public int Left { get; private init; }

    /// <param name="minutes">What each still takes, in the order in which they are strung; none below zero.</param>
    /// <param name="left">Minutes of the day that are left.</param>
    public static DayLoad Of(IReadOnlyList<int> minutes, int left)
    {
        var (fit, sum) = (0, 0);
        foreach (var one in minutes)
        {
            sum += one;
            if (sum <= left)
                fit++;
        }
        return new DayLoad { Promised = minutes.Count, Fit = fit, Needed = sum, Left = left };
    }
}
