using TagPage.Core.Customising;
using TagPage.Core.Units;

namespace TagPage.Records.Specs;

/// <summary>
/// What was read off instruments for a spec, and how its figures follow from that: the scale counts once, however many
/// figures it went into. Of a spec that was worked out its figures are the readings, with what sums left open.
/// </summary>
internal sealed class SpecReadings
{
    private readonly List<Uncertain> _read = [];
    private readonly int? _massAt, _balanceAt, _swingAt;
    private readonly Correlation _workedOut;

    public SpecReadings(SpecEntry spec, CustomisingValues values)
    {
        var tolerances = values.Tolerances;
        _workedOut = spec.Correlation;
        (Mass, _massAt) = Read((double?)spec.WeightG, (double?)spec.WeightOffG ?? tolerances.MassG);
        (Length, _) = Read((double?)spec.LengthMm / 10, tolerances.Length(0).Off);
        if (spec.TipWeight is { } tip && Mass is { } whole && Length is { } length && spec.Balance is not null)
        {
            var (tipG, _) = Read((double)new Weight(tip, spec.WeightUnit).Grams, tolerances.MassG);
            Balance = v => BalancePoint.FromTip(tipG!(v), whole(v), length(v));
        }
        else
            (Balance, _balanceAt) = Read((double?)spec.BalanceMm / 10, (double?)spec.BalanceOffMm / 10 ?? tolerances.Length(0).Off);
        if (spec is { SwingSource: SwingSource.Pendulum, PendulumAxisMm: { } at, PendulumPeriodS: { } seconds, SwingWeight: not null } && Mass is { } mass && Balance is { } balance)
        {
            var (axis, _) = Read((double)at / 10, tolerances.Length(0).Off);
            var (period, _) = Read((double)seconds, (double?)spec.PendulumOffS ?? tolerances.PeriodS);
            Swing = v => new Pendulum(mass(v), balance(v), axis!(v), period!(v)).SwingWeight(values.Gravity);
        }
        else
            (Swing, _swingAt) = Read((double?)spec.SwingWeight, (double?)spec.SwingWeightOff ?? tolerances.SwingWeight);
        Law = new Propagation(_read, Together);
    }

    public Propagation Law { get; }

    public Func<double[], double>? Mass { get; }
    public Func<double[], double>? Length { get; }
    public Func<double[], double>? Balance { get; }
    public Func<double[], double>? Swing { get; }

    private (Func<double[], double>?, int?) Read(double? value, double off)
    {
        if (value is not { } known)
            return (null, null);
        var at = _read.Count;
        _read.Add(new Uncertain(known, off));
        return (v => v[at], at);
    }

    private double Together(int one, int other) =>
        Figure(one) is { } a && Figure(other) is { } b ? _workedOut.Between(a, b) : 0;

    private int? Figure(int reading) => reading == _massAt ? 0 : reading == _balanceAt ? 1 : reading == _swingAt ? 2 : null;
}
