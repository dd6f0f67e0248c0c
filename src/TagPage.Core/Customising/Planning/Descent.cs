namespace TagPage.Core.Customising.Planning;

/// <summary>Goes from one way of changing a set to a better one, a frame at a time, until no other way of any frame is better.</summary>
/// <param name="compared">The frames as they are.</param>
/// <param name="leastMissed">Of what was given; hardly more than that is as good, and less is better whatever else it costs.</param>
/// <param name="mass">Whether mass counts; near an exact plan it is that plan's.</param>
internal sealed class Descent(Comparison compared, double leastMissed, bool mass)
{
    private const double Hardly = 0.1;

    public (bool IsWorse, double Missed, double Cost) Of(Way[] ways)
    {
        var verdict = compared.Of(ways);
        return (!verdict.IsNearer, Math.Max(verdict.Missed, leastMissed + Hardly), mass ? verdict.Cost : verdict.BesidesMass);
    }

    public Way[] From(Way[] start, Way[][] others)
    {
        Way[] best = [.. start];
        var of = Of(best);
        for (var better = true; better;)
        {
            better = false;
            for (var frame = 0; frame < best.Length; frame++)
            {
                foreach (var other in others[frame])
                {
                    var before = best[frame];
                    best[frame] = other;
                    if (Of(best) is var then && then.CompareTo(of) < 0)
                        (of, better) = (then, true);
                    else
                        best[frame] = before;
                }
            }
        }
        return best;
    }
}
