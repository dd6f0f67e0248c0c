using static TagPage.Core.Customising.Planning.LinearProgramme;

namespace TagPage.Core.Customising.Planning;

/// <summary>
/// The linear programme of a plan. Its wishes in this order: miss as little as possible, add as little as possible, take
/// off as little as possible, change the twist weight as little as possible. Balance is written as a moment about a point:
/// with the wanted balance for the point it is zero when the balance is right, whatever the mass.
/// </summary>
internal sealed class PlanProgramme
{
    private readonly LinearProgramme _programme = new();
    private readonly List<Term> _missed = [], _added = [], _removed = [], _twist = [];
    private readonly List<(int[] Added, int[] Removed)> _of = [];
    private readonly Wanted _wanted;
    private readonly Figures _mayGive;
    private readonly decimal _pivotCm, _massG;
    private readonly Term[] _mass, _moment, _swing;

    public PlanProgramme(IReadOnlyList<PlanFrame> frames, Wanted wanted, Figures mayGive)
    {
        (_wanted, _mayGive) = (wanted, mayGive);
        _pivotCm = Exact(wanted.BalanceCm ?? frames.Average(frame => frame.Now.BalanceCm));
        _massG = Math.Round(Exact(wanted.MassG ?? frames.Average(frame => frame.Now.MassG)));
        _mass = Common(wanted.MassG, 1);
        _moment = Common(wanted.BalanceCm, 1, -1);
        _swing = Common(wanted.SwingWeight, 1);
        foreach (var frame in frames)
            Add(frame);
    }

    /// <summary>Grams for each frame; null where the figures that may not give way cannot be reached.</summary>
    public IReadOnlyList<(double[] Added, double[] Removed)>? Solve() =>
        _programme.Smallest(_missed, _added, _removed, _twist) is { } values
            ? [.. _of.Select(of => (Pick(of.Added, values), Pick(of.Removed, values)))]
            : null;

    private static double[] Pick(int[] variables, double[] values) => [.. variables.Select(variable => values[variable])];

    // What the frames have in common where nothing is wanted: one variable, or two for what may lie below zero.
    private Term[] Common(double? wanted, params int[] signs) =>
        wanted is null ? [.. signs.Select(sign => new Term(_programme.Variable(), -sign))] : [];

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
        Reach(Figures.Mass, 1, [.. masses.Select(m => new Term(m.Variable, m.Sign)), .. _mass], Exact(_wanted.MassG ?? 0) - mass);
        Reach(Figures.Balance, 10 / _massG, [.. masses.Select(m => new Term(m.Variable, m.Sign * (m.AtCm - _pivotCm))), .. _moment], -mass * (balance - _pivotCm));
        Reach(Figures.SwingWeight, 1, [.. masses.Select(m => new Term(m.Variable, m.Sign * Square(m.AtCm - (decimal)Body.AxisCm) / 1000)), .. _swing], Exact(_wanted.SwingWeight ?? 0) - swing);
    }

    private void Reach(Figures figure, decimal price, Term[] terms, decimal value)
    {
        if (_mayGive.HasFlag(figure))
        {
            var (below, above) = (_programme.Variable(), _programme.Variable());
            _missed.AddRange([new(below, Exact((double)price)), new(above, Exact((double)price))]);
            terms = [.. terms, new(below, 1), new(above, -1)];
        }
        _programme.Equal(terms, value);
    }

    // Six decimals are far beyond any instrument, and keep the whole numbers short.
    private static decimal Exact(double value) => Math.Round((decimal)value, 6);

    private static decimal Square(decimal value) => value * value;
}
