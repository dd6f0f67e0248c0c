namespace TagPage.Core.Customising;

/// <summary>A racket's figures with what is open about each: grams, cm from the butt, kg·cm².</summary>
public readonly record struct MeasuredBody(Uncertain MassG, Uncertain BalanceCm, Uncertain SwingWeight)
{
    /// <summary>Figures that follow from one reading are off by its error together.</summary>
    public Correlation Correlation { get; init; }

    public Body Body => new(MassG.Value, BalanceCm.Value, SwingWeight.Value);

    public Uncertain RecoilWeight =>
        new(Body.RecoilWeight, new Propagation([MassG, BalanceCm, SwingWeight], Correlation.Between).Off(v => new Body(v[0], v[1], v[2]).RecoilWeight));

    /// <summary>Figures that follow from readings.</summary>
    /// <param name="body">What they are.</param>
    /// <param name="law">The readings.</param>
    /// <param name="formula">How they follow.</param>
    public static MeasuredBody Of(Body body, Propagation law, Func<double[], Body> formula)
    {
        return new(new(body.MassG, law.Off(Mass)), new(body.BalanceCm, law.Off(Balance)), new(body.SwingWeight, law.Off(Swing)))
        {
            Correlation = new(law.Together(Mass, Balance), law.Together(Mass, Swing), law.Together(Balance, Swing)),
        };

        double Mass(double[] v) => formula(v).MassG;
        double Balance(double[] v) => formula(v).BalanceCm;
        double Swing(double[] v) => formula(v).SwingWeight;
    }

    /// <summary>With masses added, each of them and its place off by an instrument's tolerance; grams below zero are taken away.</summary>
    public MeasuredBody After(IReadOnlyList<AddedMass> masses, Tolerances tolerances) =>
        With([.. masses.Select(mass => (tolerances.Mass(mass.Grams), tolerances.Length(mass.AtCm)))]);

    /// <summary>With masses that may each be off by something of their own.</summary>
    public MeasuredBody With(params IReadOnlyList<(Uncertain Grams, Uncertain AtCm)> masses)
    {
        Uncertain[] from = [MassG, BalanceCm, SwingWeight, .. masses.SelectMany(mass => new[] { mass.Grams, mass.AtCm })];
        return Of(Formula([.. from.Select(figure => figure.Value)]), new Propagation(from, Correlation.Between), Formula);

        Body Formula(double[] v) => new Body(v[0], v[1], v[2]).With(masses.Select((_, i) => new AddedMass(v[3 + (2 * i)], v[4 + (2 * i)])));
    }
}
