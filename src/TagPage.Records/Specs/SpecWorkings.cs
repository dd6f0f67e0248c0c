using TagPage.Core.Customising;
using TagPage.Core.Units;

namespace TagPage.Records.Specs;

/// <summary>What follows from other figures where it was not read off itself: the balance from a scale under the tip, the swing weight from a pendulum.</summary>
public static class SpecWorkings
{
    /// <param name="read">As it was read off instruments.</param>
    /// <param name="gravity">Where the pendulum swings.</param>
    public static SpecEntry Complete(SpecEntry read, double gravity)
    {
        var balanced = Balanced(read);
        return SwingWeight(balanced, gravity) is { } swing ? balanced with { SwingWeight = swing, SwingSource = SwingSource.Pendulum } : balanced;
    }

    /// <summary>With the balance alone.</summary>
    public static SpecEntry Balanced(SpecEntry read) => Balance(read) is { } mm ? read with { Balance = mm, BalanceUnit = BalanceUnit.Mm } : read;

    private static decimal? Balance(SpecEntry read) =>
        read is { TipWeight: { } tip, Balance: null, WeightG: { } grams and > 0, LengthMm: { } length }
            ? Math.Round((decimal)BalancePoint.FromTip((double)new Weight(tip, read.WeightUnit).Grams, (double)grams, (double)length), 1)
            : null;

    private static decimal? SwingWeight(SpecEntry read, double gravity) =>
        read is { PendulumPeriodS: { } seconds, SwingWeight: null, WeightG: { } grams, BalanceMm: { } mm, PendulumAxisMm: { } axis }
            ? Math.Round((decimal)new Pendulum((double)grams, (double)mm / 10, (double)axis / 10, (double)seconds).SwingWeight(gravity), 1)
            : null;
}
