namespace TagPage.Core.Customising.Planning;

/// <summary>Whether frames are the same already, as far as measuring can tell.</summary>
public static class MatchedSet
{
    /// <param name="frames">One or more.</param>
    /// <param name="wanted">What is given of the target; all frames have to measure it.</param>
    public static bool IsMatched(IReadOnlyCollection<MeasuredBody> frames, Wanted wanted) =>
        IsSame(frames.Select(frame => frame.MassG), wanted.MassG)
        && IsSame(frames.Select(frame => frame.BalanceCm), wanted.BalanceCm)
        && IsSame(frames.Select(frame => frame.SwingWeight), wanted.SwingWeight);

    private static bool IsSame(IEnumerable<Uncertain> figures, double? given) =>
        !Spread.Of(given is { } exact ? [.. figures, new Uncertain(exact, 0)] : [.. figures]).CanBeTold;
}
