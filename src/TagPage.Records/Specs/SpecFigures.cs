using TagPage.Core.Customising;

namespace TagPage.Records.Specs;

/// <summary>A spec in grams and centimetres, each figure with what the shop's instruments leave open; null where it was not measured.</summary>
public sealed record SpecFigures
{
    public Uncertain? MassG { get; private init; }
    public Uncertain? BalanceCm { get; private init; }
    public Uncertain? SwingWeight { get; private init; }
    public Uncertain? RecoilWeight { get; private init; }
    public Uncertain? Points { get; private init; }

    /// <summary>The racket as a body; null unless weight, balance and swing weight are all known.</summary>
    public Body? Body => MassG is { } mass && BalanceCm is { } balance && SwingWeight is { } swing
        ? new Body(mass.Value, balance.Value, swing.Value)
        : null;

    public static SpecFigures Of(SpecEntry spec, CustomisingValues values)
    {
        Uncertain? mass = Off(Of(spec.WeightG, values.Tolerances.Mass), spec.WeightOffG), length = Of(spec.LengthMm / 10, values.Tolerances.Length);
        var balance = Off(Balance(spec, mass, length, values.Tolerances), spec.BalanceOffMm / 10);
        var swing = Off(Swing(spec, mass, balance, values), spec.SwingWeightOff);
        return new SpecFigures
        {
            MassG = mass,
            BalanceCm = balance,
            SwingWeight = swing,
            RecoilWeight = mass is { } m && balance is { } b && swing is { } s ? Measured.RecoilWeight(m, b, s) : null,
            Points = balance is { } at && length is { } l ? Measured.Points(at, l) : null,
        };
    }

    private static Uncertain? Of(decimal? value, Func<double, Uncertain> instrument) => value is { } known ? instrument((double)known) : null;

    private static Uncertain? Off(Uncertain? measured, decimal? workedOut) =>
        measured is { } figure && workedOut is { } off ? figure with { Off = (double)off } : measured;

    // The balance stands as it was saved; two scales leave something else open than a balance board.
    private static Uncertain? Balance(SpecEntry spec, Uncertain? mass, Uncertain? length, Tolerances tolerances)
    {
        if (Of(spec.BalanceMm / 10, tolerances.Length) is not { } balance)
            return null;
        return spec.TipWeight is { } tip && mass is { } m && length is { } l
            ? balance with { Off = Measured.BalanceFromTip(tolerances.Mass((double)new Core.Units.Weight(tip, spec.WeightUnit).Grams), m, l).Off }
            : balance;
    }

    private static Uncertain? Swing(SpecEntry spec, Uncertain? mass, Uncertain? balance, CustomisingValues values)
    {
        if (Of(spec.SwingWeight, values.Tolerances.Swing) is not { } swing)
            return null;
        return spec is { SwingSource: SwingSource.Pendulum, PendulumAxisMm: { } axis, PendulumPeriodS: { } period } && mass is { } m && balance is { } b
            ? swing with { Off = Measured.PendulumSwingWeight(m, b, values.Tolerances.Length((double)axis / 10), new((double)period, (double)(spec.PendulumOffS ?? 0)), values.Gravity).Off }
            : swing;
    }
}
