namespace TagPage.Core.Jobs;

/// <summary>How much of what is promised for a day still fits into it, strung one after the other by one pair of hands.</summary>
public sealed record DayLoad
{
    /// <summary>Rackets that are promised by the day.</summary>
    public int Promised { get; private init; }

    /// <summary>How many of them, in their order, come off the machine before the day ends.</summary>
    public int Fit { get; private init; }

    /// <summary>Minutes of work on all that is strung, promised or not.</summary>
    public int Needed { get; private init; }

    /// <summary>Minutes of the day that are left.</summary>
    public int Left { get; private init; }

    /// <param name="work">What each still takes, in the order in which they are strung, none below zero; and whether it is promised by the day.</param>
    /// <param name="left">Minutes of the day that are left.</param>
    public static DayLoad Of(IReadOnlyList<(int Minutes, bool IsPromised)> work, int left)
    {
        var (fit, sum) = (0, 0);
        foreach (var (minutes, isPromised) in work)
        {
            sum += minutes;
            if (isPromised && sum <= left)
                fit++;
        }
        return new DayLoad { Promised = work.Count(one => one.IsPromised), Fit = fit, Needed = sum, Left = left };
    }
}
