using TagPage.Core.Customising;
using TagPage.Core.Sports;
using TagPage.Records.Storage;

namespace TagPage.Records.Specs;

/// <summary>Measured numbers that are possible but unusual for their sport. The ranges are from memory, wide on purpose.</summary>
public static class SpecRules
{
    private sealed record Usual(decimal MinG, decimal MaxG, decimal MinBalanceMm, decimal MaxBalanceMm, decimal MinSwing, decimal MaxSwing);

    private static Usual Of(Sport sport) => sport switch
    {
        Sport.Tennis => new(180, 400, 260, 400, 180, 400),
        Sport.Badminton => new(65, 125, 250, 340, 60, 130),
        _ => new(90, 255, 250, 420, 80, 240),
    };

    /// <param name="sport">The racket's.</param>
    /// <param name="today">The shop's day.</param>
    /// <param name="input">As typed.</param>
    public static IReadOnlyList<Oddity> Oddities(Sport sport, DateOnly today, SpecEntry input)
    {
        var usual = Of(sport);
        Oddity?[] oddities =
        [
            input.WeightG > SportFacts.Of(sport).Limits.MaxMassG ? new MeasuredTooHeavy(input.WeightG.Value, sport)
                : IsOutside(input.WeightG, usual.MinG, usual.MaxG) ? new WeightUnusual(input.WeightG!.Value, sport) : null,
            BeyondTip(input) is { } beyond ? beyond
                : IsOutside(input.BalanceMm, usual.MinBalanceMm, usual.MaxBalanceMm) ? new BalanceUnusual(input.BalanceMm!.Value, sport) : null,
            TooSmall(input) is { } small ? small
                : IsOutside(input.SwingWeight, usual.MinSwing, usual.MaxSwing) ? new SwingWeightUnusual(input.SwingWeight!.Value, sport) : null,
            input.LengthMm > SportFacts.Of(sport).Limits.MaxLengthMm ? new MeasuredTooLong(input.LengthMm.Value, sport) : null,
            input.MeasuredOn > today ? new MeasuredInFuture(input.MeasuredOn) : null,
        ];
        return [.. oddities.OfType<Oddity>()];
    }

    /// <summary>Figures that cannot be true together, whatever the sport.</summary>
    public static IReadOnlyList<Oddity> Impossible(SpecEntry input) => [.. new Oddity?[] { BeyondTip(input), TooSmall(input) }.OfType<Oddity>()];

    private static BalanceBeyondTip? BeyondTip(SpecEntry input) =>
        input.BalanceMm >= input.LengthMm ? new BalanceBeyondTip(input.BalanceMm.Value, input.LengthMm.Value) : null;

    private static SwingWeightTooSmall? TooSmall(SpecEntry input)
    {
        if (input is not { WeightG: { } grams, BalanceMm: { } mm, SwingWeight: { } swing })
            return null;
        var arm = (mm / 10) - (decimal)Body.AxisCm;
        var least = grams / 1000 * arm * arm;
        return swing < least ? new SwingWeightTooSmall(swing, least) { Grams = grams, BalanceMm = mm } : null;
    }

    private static bool IsOutside(decimal? value, decimal min, decimal max) => value < min || value > max;
}
