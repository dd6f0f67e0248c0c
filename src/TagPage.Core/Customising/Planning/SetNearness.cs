namespace TagPage.Core.Customising.Planning;

/// <summary>
/// Whether a plan is worth doing to a set. It has to bring the frames nearer to what is given of the target, and must not
/// leave them farther apart; where nothing is given, or the given is no farther off than before, nearer to each other.
/// Measured in sums and in squares, as <see cref="Miss"/> is.
/// </summary>
internal sealed class SetNearness(IReadOnlyList<Body> now, Wanted wanted)
{
    // The figures of a matched set are shown to a tenth: less is no difference.
    private const double Shown = 0.1;

    private const double Nothing = 1e-6;

    public bool IsNearer(IReadOnlyList<Body> after)
    {
        var (before, then) = (Off(now), Off(after));
        var (apart, left) = (Apart(now), Apart(after));
        return then.Sum < before.Sum - Nothing && then.Root < before.Root - Nothing
            ? left.Sum <= apart.Sum + Shown && left.Root <= apart.Root + Shown
            : then.Sum <= before.Sum + Nothing && then.Root <= before.Root + Nothing && left.Sum < apart.Sum - Shown && left.Root < apart.Root - Shown;
    }

    private (double Sum, double Root) Off(IReadOnlyList<Body> frames)
    {
        Miss[] misses = [.. frames.Select(frame => Miss.Of(frame, wanted))];
        return (misses.Sum(miss => miss.Sum), Math.Sqrt(misses.Sum(miss => miss.Squared)));
    }

    private static (double Sum, double Root) Apart(IReadOnlyList<Body> frames)
    {
        var range = new Miss(Range(frames, body => body.MassG), Range(frames, body => body.BalanceCm) * 10, Range(frames, body => body.SwingWeight));
        return (range.Sum, Math.Sqrt(range.Squared));
    }

    private static double Range(IReadOnlyList<Body> frames, Func<Body, double> figure) => frames.Max(figure) - frames.Min(figure);
}
