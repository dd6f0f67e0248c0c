namespace TagPage.Core.Customising;

/// <summary>How far the frames of a set are apart in one figure.</summary>
/// <param name="Least">Lowest value.</param>
/// <param name="Most">Highest value.</param>
/// <param name="Off">How far off their difference may be: both readings are, each by its own.</param>
public sealed record Spread(double Least, double Most, double Off)
{
    public double Apart => Most - Least;

    /// <summary>Whether it is more than two readings of one and the same frame would differ by.</summary>
    public bool CanBeTold => Apart > Off;

    /// <param name="values">One or more; of equal ones that are measured worst.</param>
    public static Spread Of(IReadOnlyCollection<Uncertain> values)
    {
        var least = values.OrderBy(value => value.Value).ThenByDescending(value => value.Off).First();
        var most = values.OrderByDescending(value => value.Value).ThenByDescending(value => value.Off).First();
        return new Spread(least.Value, most.Value, Math.Sqrt((least.Off * least.Off) + (most.Off * most.Off)));
    }
}
