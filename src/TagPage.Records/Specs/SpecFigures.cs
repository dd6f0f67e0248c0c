using TagPage.Core.Customising;

namespace TagPage.Records.Specs;

/// <summary>A spec in grams and centimetres, each figure with what the shop's instruments leave open; null where it was not measured.</summary>
public sealed record SpecFigures
{
    public Uncertain? MassG { get; private init; }
    public Uncertain? BalanceCm { get; private init; }
    public Uncertain? SwingWeight { get; private init; }
    public Uncertain? Points { get; private init; }

    /// <summary>All three together; null unless weight, balance and swing weight are all known.</summary>
    public MeasuredBody? Measured { get; private init; }

    public Uncertain? RecoilWeight => Measured?.RecoilWeight;

    public Body? Body => Measured?.Body;

    public static SpecFigures Of(SpecEntry spec, CustomisingValues values)
    {
        var read = new SpecReadings(spec, values);
        var (mass, balance, swing) = ((double?)spec.WeightG, (double?)spec.BalanceMm / 10, (double?)spec.SwingWeight);
        return new SpecFigures
        {
            MassG = Figure(mass, read.Mass, read.Law),
            BalanceCm = Figure(balance, read.Balance, read.Law),
            SwingWeight = Figure(swing, read.Swing, read.Law),
            Points = balance is { } at && read is { Balance: { } from, Length: { } length }
                ? Figure(BalancePoint.Points(at, (double)spec.LengthMm! / 10), v => BalancePoint.Points(from(v), length(v)), read.Law)
                : null,
            Measured = mass is { } m && balance is { } b && swing is { } s
                ? MeasuredBody.Of(new Body(m, b, s), read.Law, v => new Body(read.Mass!(v), read.Balance!(v), read.Swing!(v)))
                : null,
        };
    }

    // Figures stand as they were saved; only what is open about them is worked out.
    private static Uncertain? Figure(double? saved, Func<double[], double>? formula, Propagation law) =>
        saved is { } value && formula is not null ? new Uncertain(value, law.Off(formula)) : null;
}
