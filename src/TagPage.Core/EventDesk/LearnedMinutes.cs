namespace TagPage.Core.EventDesk;

/// <summary>How long a racket takes a technician: what is assumed to begin with, drawn towards what was timed.</summary>
public static class LearnedMinutes
{
    /// <summary>Minutes for a racket while nothing was timed. Common practice, no source.</summary>
    public const int Start = 30;

    /// <summary>The shortest and longest time that teaches anything: beyond, somebody pressed twice or went to lunch.</summary>
    public const int Shortest = 5, Longest = 120;

    // The assumption counts as so many rackets, so that one quick one does not halve every promise.
    private const int AssumedRackets = 3;

    /// <summary>Minutes to plan with, rounded up: a promise should rather be kept.</summary>
    /// <param name="timed">Minutes from start to strung of one technician's rackets of one sport, in any order.</param>
    public static int From(IEnumerable<double> timed)
    {
        double[] taught = [.. timed.Where(minutes => minutes is >= Shortest and <= Longest)];
        return (int)Math.Ceiling(((AssumedRackets * Start) + taught.Sum()) / (AssumedRackets + taught.Length));
    }
}
