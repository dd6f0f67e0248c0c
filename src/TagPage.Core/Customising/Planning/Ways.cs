namespace TagPage.Core.Customising.Planning;

/// <summary>The ways of changing one frame in steps.</summary>
internal sealed class Ways(PlanFrame frame, Judge judge, double stepG)
{
    // Beyond that no other first piece is ever the better one: what is missed grows evenly.
    private const int MostSteps = 50;

    private readonly AddedMass[] _ones = [.. Ones(frame)];
    private readonly double[][] _steps = [.. Enumerable.Range(0, frame.Places.Count + frame.Removable.Count).Select(at => Steps(frame, at, stepG))];

    /// <summary>It stays as it is.</summary>
    public Way None { get; } = judge.Way(frame, new double[frame.Places.Count + frame.Removable.Count], frame.Now);

    /// <summary>What each gram at a place does, and each gram off an earlier piece.</summary>
    public static IEnumerable<AddedMass> Ones(PlanFrame frame) => [.. frame.Places.Select(place => place.Carrying(1)), .. frame.Removable.Select(earlier => earlier with { Grams = -1 })];

    /// <summary>At one place, or off one piece.</summary>
    public IEnumerable<Way> One() => Enumerable.Range(0, _ones.Length).SelectMany(at => _steps[at].Select(grams => Of((at, grams))));

    /// <summary>At two.</summary>
    public IEnumerable<Way> Two()
    {
        for (var one = 0; one < _ones.Length; one++)
        {
            for (var other = one + 1; other < _ones.Length; other++)
            {
                foreach (var grams in _steps[one])
                {
                    foreach (var more in _steps[other])
                        yield return Of((one, grams), (other, more));
                }
            }
        }
    }

    public Way Of(double[] grams) => judge.Way(frame, grams,
        Enumerable.Range(0, grams.Length).Where(at => grams[at] > 0).Aggregate(frame.Now, (body, at) => With(body, at, grams[at])));

    private Way Of(params ReadOnlySpan<(int At, double Grams)> pieces)
    {
        var grams = new double[_ones.Length];
        var body = frame.Now;
        foreach (var (at, g) in pieces)
        {
            grams[at] = g;
            body = With(body, at, g);
        }
        return judge.Way(frame, grams, body);
    }

    private Body With(Body body, int at, double grams) => body.With(_ones[at] with { Grams = _ones[at].Grams * grams });

    // An earlier piece may come off wholly whatever it weighs.
    private static double[] Steps(PlanFrame frame, int at, double stepG)
    {
        var isPlace = at < frame.Places.Count;
        var (step, most) = isPlace ? (frame.Places[at].Paired ? 2 * stepG : stepG, frame.Places[at].MostG) : (stepG, frame.Removable[at - frame.Places.Count].Grams);
        double[] steps = [.. Enumerable.Range(1, Math.Clamp((int)Math.Floor((most / step) + 1e-9), 0, MostSteps)).Select(i => i * step)];
        return isPlace || (steps.Length > 0 && steps[^1] >= most - 1e-9) ? steps : [.. steps, most];
    }
}
