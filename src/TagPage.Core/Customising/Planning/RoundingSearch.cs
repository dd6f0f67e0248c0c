namespace TagPage.Core.Customising.Planning;

/// <summary>Tries every combination of rounded pieces and keeps the one that misses least, of equal ones the first.</summary>
/// <param name="frame">What they go on, and come off from.</param>
/// <param name="choices">Grams to choose from, for each place and then for each removable piece.</param>
/// <param name="goal">What to come near to.</param>
internal sealed class RoundingSearch(PlanFrame frame, double[][] choices, Wanted goal)
{
    private readonly AddedMass[] _ones =
        [.. frame.Places.Select(place => place.Carrying(1)), .. frame.Removable.Select(earlier => earlier with { Grams = -1 })];

    private readonly double[] _grams = new double[choices.Length];
    private double[] _best = [];
    private double _missed = double.MaxValue;

    public double[] Best()
    {
        Try(0, frame.Now);
        return _best;
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
        if (missed >= _missed)
            return;
        (_missed, _best) = (missed, [.. _grams]);
    }
}
