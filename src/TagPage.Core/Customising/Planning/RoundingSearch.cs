namespace TagPage.Core.Customising.Planning;

/// <summary>Tries every combination of rounded pieces and keeps those that miss least, of equal ones the first.</summary>
/// <param name="frame">What they go on, and come off from.</param>
/// <param name="choices">Grams to choose from, for each place and then for each removable piece.</param>
/// <param name="goal">What to come near to.</param>
internal sealed class RoundingSearch(PlanFrame frame, double[][] choices, Wanted goal)
{
    private readonly AddedMass[] _ones = [.. Ways.Ones(frame)];

    private readonly double[] _grams = new double[choices.Length];
    private readonly List<(double Missed, double[] Grams)> _best = [];
    private int _count;

    /// <param name="count">One or more.</param>
    public IReadOnlyList<double[]> Best(int count)
    {
        _count = count;
        Try(0, frame.Now);
        return [.. _best.Select(best => best.Grams)];
    }

    private void Try(int piece, Body body)
    {
        if (piece == choices.Length)
            Keep(body);
        else
        {
            foreach (var grams in choices[piece])
            {
                _grams[piece] = grams;
                Try(piece + 1, grams == 0 ? body : body.With(_ones[piece] with { Grams = _ones[piece].Grams * grams }));
            }
        }
    }

    private void Keep(Body body)
    {
        var missed = Miss.Of(body, goal).Squared;
        if (_best.Count == _count && missed >= _best[^1].Missed)
            return;
        var at = _best.FindIndex(best => missed < best.Missed);
        _best.Insert(at < 0 ? _best.Count : at, (missed, [.. _grams]));
        if (_best.Count > _count)
            _best.RemoveAt(_count);
    }
}
