namespace TagPage.Core.Customising;

/// <summary>A racket's figures with what is open about each: grams, cm from the butt, kg·cm².</summary>
public readonly record struct MeasuredBody(Uncertain MassG, Uncertain BalanceCm, Uncertain SwingWeight, Uncertain RecoilWeight);
