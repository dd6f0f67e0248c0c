using TagPage.Core.Customising;
using TagPage.Records.Specs;

namespace TagPage.Web.Words;

/// <summary>Why what was read off instruments can be no spec, field by field, whether it was typed or comes from a file.</summary>
public static class SpecFaults
{
    public const string Weight = "A racket weighs between 50 and 500 g.";
    public const string Length = "A racket is between 300 and 800 mm long.";
    public const string Balance = "A balance point is between 100 and 500 mm from the butt.";
    public const string TipWeight = "The tip carries only part of the weight. Enter what the scale under the tip shows.";
    public const string SwingWeight = "Enter a swing weight of more than 0 and at most 10000 kg·cm².";
    public const string PendulumAxis = "It hangs between 0 and 800 mm from the butt.";

    /// <param name="grams">Measured or wanted; null for none.</param>
    public static string? OfWeight(decimal? grams) => grams is < 50 or > 500 ? Weight : null;

    /// <param name="mm">From the butt; null for none.</param>
    public static string? OfBalance(decimal? mm) => mm is < 100 or > 500 ? Balance : null;

    public static IEnumerable<(string Field, string Says)> Of(SpecEntry read)
    {
        if (OfWeight(read.WeightG) is { } weight)
            yield return (nameof(SpecEntry.Weight), weight);
        if (read.LengthMm is < 300 or > 800)
            yield return (nameof(SpecEntry.Length), Length);
        if (read.SwingWeight is <= 0 or > 10_000)
            yield return (nameof(SpecEntry.SwingWeight), SwingWeight);
        if (OfBalance(read) is { } balance)
            yield return (FromTip(read) ? nameof(SpecEntry.TipWeight) : nameof(SpecEntry.Balance), balance);
        if (read.PendulumAxisMm is < 0 or > 800)
            yield return (nameof(SpecEntry.PendulumAxis), PendulumAxis);
        else if (OfPendulum(read) is { } pendulum)
            yield return (nameof(SpecEntry.PendulumPeriodS), pendulum);
    }

    private static bool FromTip(SpecEntry read) => read is { TipWeight: not null, Balance: null };

    private static string? OfBalance(SpecEntry read)
    {
        if (FromTip(read) && (read.WeightG is null || read.LengthMm is null))
            return "Enter weight and length as well: the balance follows from all three.";
        if (FromTip(read) && read.TipWeight >= read.Weight)
            return TipWeight;
        if (read is { Balance: not null, BalanceUnit: BalanceUnit.Points, LengthMm: null })
            return "Enter the length as well: points count from the frame’s middle.";
        return OfBalance(SpecWorkings.Balanced(read).BalanceMm);
    }

    private static string? OfPendulum(SpecEntry read)
    {
        if (read is not { PendulumPeriodS: not null, SwingWeight: null })
            return null;
        var worked = SpecWorkings.Complete(read, Pendulum.StandardGravity);
        if (worked.SwingWeight is null)
            return "Enter weight, balance and where it hangs as well: the swing weight follows from all four.";
        if (read.PendulumAxisMm > read.LengthMm)
            return "It cannot hang beyond its tip. Measure from the butt.";
        return worked.SwingWeight is < 30 or > 500 ? "No racket swings like that. Count whole swings, there and back, and check where it hangs." : null;
    }
}
