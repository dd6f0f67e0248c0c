using static TagPage.Core.Customising.Planning.LinearProgramme;

namespace TagPage.Core.Customising.Planning;

/// <summary>
/// The linear programme of a plan. Its wishes in this order: leave the frames as little apart as possible and bring what they
/// have in common as near as possible to what is wanted, or the other way round (see <see cref="PlanOrder"/>), add as little
/// as possible, take off as little as possible, change the twist weight as little as possible. Balance is written as a moment
/// about a point: with the wanted balance for the point it is zero when the balance is right, whatever the mass.
/// </summary>
internal sealed class PlanProgramme
{
    private readonly LinearProgramme _programme = new();
    private readonly List<Term> _apart = [], _missed = [], _added = [], _removed = [], _twist = [];
    private readonly List<(int[] Added, int[] Removed)> _of = [];
    private readonly Wanted _wanted;
    private readonly PlanOrder _order;
    private readonly decimal _gram, _pivotCm, _massG;
    private readonly Term[] _mass, _moment, _swing;

    /// <param name="frames">One or more.</param>
    /// <param name="wanted">Of each of them.</param>
    /// <param name="mayGive">Wanted figures that need not be reached.</param>
    /// <param name="order">What comes first where frames need not become the same.</param>
    /// <param name="gram">What a gram weighs against a gram, a millimetre or one kg·cm² where it is weighed against them.</param>
    public PlanProgramme(IReadOnlyList<PlanFrame> frames, Wanted wanted, Figures mayGive, PlanOrder order, double gram = 0)
    {
        (_wanted, _order, _gram) = (wanted, order, Exact(gram));
        _pivotCm = Exact(wanted.BalanceCm ?? frames.Average(frame => frame.Now.BalanceCm));
        _massG = Math.Max(1, Math.Round(Exact(wanted.MassG ?? frames.Average(frame => frame.Now.MassG))));
        _mass = Common(wanted.MassG, mayGive.HasFlag(Figures.Mass), 1, [1]);
        _moment = Common(wanted.BalanceCm, mayGive.HasFlag(Figures.Balance), PerMoment, [1, -1]);
        _swing = Common(wanted.SwingWeight, mayGive.HasFlag(Figures.SwingWeight), 1, [1]);
        foreach (var frame in frames)
            Add(frame);
    }

    // A millimetre of balance, as a moment.
    private decimal PerMoment => Exact((double)(10 / _massG));

    /// <summary>Grams for each frame, and what the frames come to in common; null where that cannot be reached.</summary>
    public (Body Target, IReadOnlyList<(double[] Added, double[] Removed)> Grams)? Solve() =>
        _programme.Smallest(Wishes) is { } values
            ? (Target(values), [.. _of.Select(of => (Pick(of.Added, values), Pick(of.Removed, values)))])
            : null;

    private List<Term>[] Wishes => _order switch
    {
        PlanOrder.WantedFirst => [_missed, [.. _apart, .. Weight], _removed, _twist],
        PlanOrder.Weighed => [[.. _missed, .. _apart, .. Weight], _removed, _twist],
        _ => [_apart, _missed, _added, _removed, _twist],
    };

    private IEnumerable<Term> Weight => _added.Select(term => term with { Times = _gram });

    private Body Target(double[] values)
    {
        var mass = Value(_wanted.MassG, _mass, values);
        return new Body(mass, (double)_pivotCm + (Value(0, _moment, values) / mass), Value(_wanted.SwingWeight, _swing, values));
    }

    private static double Value(double? wanted, Term[] terms, double[] values) => (wanted ?? 0) - terms.Sum(term => (double)term.Times * values[term.Variable]);

    private static double[] Pick(int[] variables, double[] values) => [.. variables.Select(variable => values[variable])];

    // What the frames have in common differs from what is wanted by a variable for each direction; where nothing is wanted it
    // is one itself, or two for what may lie below zero.
    private Term[] Common(double? wanted, bool mayGive, decimal price, int[] signs)
    {
        if (wanted is not null && !mayGive)
            return [];
        Term[] common = [.. (wanted is null ? signs : [1, -1]).Select(sign => new Term(_programme.Variable(), -sign))];
        if (wanted is not null)
            _missed.AddRange(common.Select(term => term with { Times = price }));
        return common;
    }

    private void Add(PlanFrame frame)
    {
        int[] added = [.. frame.Places.Select(place => _programme.Variable(Exact(place.MostG)))];
        int[] removed = [.. frame.Removable.Select(earlier => _programme.Variable(Exact(earlier.Grams)))];
        _of.Add((added, removed));
        _added.AddRange(added.Select(variable => new Term(variable, 1)));
        _removed.AddRange(removed.Select(variable => new Term(variable, 1)));
        _twist.AddRange(added.Zip(frame.Places, (variable, place) => new Term(variable, Square(Exact(place.OffAxisCm)))));

        (int Variable, int Sign, decimal AtCm)[] masses =
        [
            .. added.Zip(frame.Places, (variable, place) => (variable, 1, Exact(place.AtCm))),
            .. removed.Zip(frame.Removable, (variable, earlier) => (variable, -1, Exact(earlier.AtCm))),
        ];
        var (mass, balance, swing) = (Exact(frame.Now.MassG), Exact(frame.Now.BalanceCm), Exact(frame.Now.SwingWeight));
        Reach(_wanted.MassG, 1, [.. masses.Select(m => new Term(m.Variable, m.Sign)), .. _mass], Exact(_wanted.MassG ?? 0) - mass);
        Reach(_wanted.BalanceCm, PerMoment, [.. masses.Select(m => new Term(m.Variable, m.Sign * (m.AtCm - _pivotCm))), .. _moment], -mass * (balance - _pivotCm));
        Reach(_wanted.SwingWeight, 1, [.. masses.Select(m => new Term(m.Variable, m.Sign * Square(m.AtCm - (decimal)Body.AxisCm) / 1000)), .. _swing], Exact(_wanted.SwingWeight ?? 0) - swing);
    }

    // Unless being the same comes first, what is wanted is what the frames have in common in that figure.
    private void Reach(double? wanted, decimal price, Term[] terms, decimal value)
    {
        if (_order != PlanOrder.Same)
        {
            var (below, above) = (_programme.Variable(), _programme.Variable());
            var differs = wanted is not null && _order != PlanOrder.LeastApart ? _missed : _apart;
            differs.AddRange([new(below, price), new(above, price)]);
            terms = [.. terms, new(below, 1), new(above, -1)];
        }
        _programme.Equal(terms, value);
    }

    // Six decimals are far beyond any instrument, and keep the whole numbers short.
    private static decimal Exact(double value) => Math.Round((decimal)value, 6);

    private static decimal Square(decimal value) => value * value;
}
