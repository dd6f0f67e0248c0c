namespace TagPage.Core.Customising;

/// <summary>Figures that follow from measured ones, each with what the instruments leave open.</summary>
public static class Measured
{
    public static Uncertain Points(Uncertain balanceCm, Uncertain lengthCm) =>
        Uncertain.Of(v => BalancePoint.Points(v[0], v[1]), balanceCm, lengthCm);

    /// <summary>By how much masses change the twist weight; see <see cref="AddedMass.TwistChange"/>.</summary>
    public static Uncertain TwistChange(IReadOnlyList<AddedMass> masses, Tolerances tolerances) => Uncertain.Of(
        v => Enumerable.Range(0, masses.Count).Sum(i => new AddedMass(v[2 * i], 0, v[(2 * i) + 1]).TwistChange),
        [.. masses.SelectMany(mass => new[] { tolerances.Mass(mass.Grams), mass.OffAxisCm == 0 ? new(0, 0) : tolerances.Length(mass.OffAxisCm) })]);
}
