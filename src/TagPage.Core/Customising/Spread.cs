namespace TagPage.Core.Customising;

/// <summary>How far the frames of a set are apart in one figure.</summary>
/// <param name="Least">Lowest value.</param>
/// <param name="Most">Highest value.</param>
/// <param name="Off">How far off each value may be.</param>
public sealed record Spread(double Least, double Most, double Off)
{
    public double Apart => Most - Least;

    /// <summary>How far off that may be: both readings are.</summary>
    public double ApartOff => Math.Sqrt(2) * Off;

    /// <summary>Whether it is more than two readings of one and the same frame would differ by.</summary>
    public bool CanBeTold => Apart > ApartOff;

    /// <param name="values">One or more.</param>
    /// <param name="off">How far off each may be.</param>
    public static Spread Of(IReadOnlyCollection<double> values, double off) => new(values.Min(), values.Max(), off);
}
