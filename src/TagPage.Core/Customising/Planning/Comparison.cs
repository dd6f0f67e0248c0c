namespace TagPage.Core.Customising.Planning;

/// <summary>Frames as they are, against what could be done to them.</summary>
internal sealed class Comparison
{
    // The figures of a matched set are shown to a tenth: less is no difference.
    private const double Shown = 0.1;

    private const double Nothing = 1e-6;

    private readonly Judge _judge;
    private readonly (double Missed, double Mass, double Work, double Sum, double Root) _before;
    private readonly (double Sum, double Root) _apart;

    /// <param name="judge">Of what counts.</param>
    /// <param name="now">The frames as they are.</param>
    public Comparison(Judge judge, IReadOnlyList<Way> now)
    {
        (_judge, _before) = (judge, Sums(now));
        var apart = Apart(now);
        (_apart, Cost) = ((apart.Sum, Math.Sqrt(apart.Squared)), _before.Missed + judge.Told(apart));
    }

    /// <summary>Of leaving them as they are.</summary>
    public double Cost { get; }

    /// <param name="IsNearer">Nearer to what was given and no farther apart; or nearer to each other and no farther off.</param>
    /// <param name="IsNearerAtAll">Nearer to one of both, whatever becomes of the other.</param>
    /// <param name="Missed">Of what was given.</param>
    /// <param name="BesidesMass">All that counts but the mass; less is better.</param>
    /// <param name="Mass">What that has to win.</param>
    public readonly record struct Verdict(bool IsNearer, bool IsNearerAtAll, double Missed, double BesidesMass, double Mass)
    {
        public double Cost => BesidesMass + Mass;
    }

    /// <param name="ways">One for each of them.</param>
    public Verdict Of(IReadOnlyList<Way> ways)
    {
        var (then, left) = (Sums(ways), Apart(ways));
        var nearer = then.Sum < _before.Sum - Nothing && then.Root < _before.Root - Nothing;
        var noFarther = then.Sum <= _before.Sum + Nothing && then.Root <= _before.Root + Nothing;
        var (sum, root) = (left.Sum - _apart.Sum, Math.Sqrt(left.Squared) - _apart.Root);
        return new(
            nearer ? sum <= Shown && root <= Shown : noFarther && sum < -Shown && root < -Shown,
            nearer || (sum < -Nothing && root < -Nothing),
            then.Missed,
            then.Missed + then.Work + _judge.Told(left),
            then.Mass);
    }

    private static (double Missed, double Mass, double Work, double Sum, double Root) Sums(IReadOnlyList<Way> ways)
    {
        var (missed, mass, work, sum, squared) = (0.0, 0.0, 0.0, 0.0, 0.0);
        for (var i = 0; i < ways.Count; i++)
        {
            var way = ways[i];
            missed += way.Missed;
            mass += way.Mass;
            work += way.Work;
            sum += way.Off.Sum;
            squared += way.Off.Squared;
        }
        return (missed, mass, work, sum, Math.Sqrt(squared));
    }

    private static Miss Apart(IReadOnlyList<Way> ways)
    {
        var (least, most) = (ways[0].After, ways[0].After);
        for (var i = 1; i < ways.Count; i++)
        {
            var body = ways[i].After;
            least = new(Math.Min(least.MassG, body.MassG), Math.Min(least.BalanceCm, body.BalanceCm), Math.Min(least.SwingWeight, body.SwingWeight));
            most = new(Math.Max(most.MassG, body.MassG), Math.Max(most.BalanceCm, body.BalanceCm), Math.Max(most.SwingWeight, body.SwingWeight));
        }
        return new(most.MassG - least.MassG, (most.BalanceCm - least.BalanceCm) * 10, most.SwingWeight - least.SwingWeight);
    }
}
