using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Customising;
using TagPage.Records.Specs;
using TagPage.Records.Storage;

namespace TagPage.Web.Words;

/// <summary>What is odd about measured numbers: what is, and what to do about it.</summary>
public static class SpecQuestions
{
    /// <summary>As a question on the form; null for what is no matter of specs.</summary>
    public static string? Of(Oddity odd) => Says(odd) is { } says ? $"{says} {(odd is WeightUnusual or BalanceUnusual or SwingWeightUnusual ? "Measure again" : "Correct it")}, or tick below to keep it." : null;

    /// <summary>Without the question; null for what is no matter of specs.</summary>
    public static string? Says(Oddity odd) => odd switch
    {
        MeasuredInFuture { Day: var day } => $"{Formats.Day(day)} is in the future.",
        WeightUnusual weight => Unusual(weight.Grams, "g", weight.Sport),
        BalanceUnusual balance => Unusual(balance.Mm, "mm from the butt", balance.Sport),
        SwingWeightUnusual swing => Unusual(swing.SwingWeight, "kg·cm²", swing.Sport),
        SwingWeightTooSmall small =>
            $"No racket of {Round(small.Grams)} g that balances at {Round(small.BalanceMm)} mm has a swing weight of {Round(small.SwingWeight)} kg·cm²: even with all its mass at that point it would have {Round(small.Least)}.",
        BalanceBeyondTip beyond => $"The balance point, {Round(beyond.Mm)} mm from the butt, lies beyond the tip at {Round(beyond.LengthMm)} mm.",
        PlaceBeyondTip { At: var at } beyond =>
            $"{Formats.Number(at.Value)} {SpecWords.Of(at.Unit)} from the butt lies beyond the tip of this frame, at {Round(new Distance(beyond.TipMm, LengthUnit.Mm).In(at.Unit))} {SpecWords.Of(at.Unit)}.",
        MeasuredTooHeavy heavy => $"{Formats.Number(heavy.Grams)} g is more than the {SportFacts.Of(heavy.Sport).Limits.MaxMassG} g of the {SportFacts.Of(heavy.Sport).Limits.Source}.",
        MeasuredTooLong measured => TooLong($"{Formats.Number(measured.LengthMm)} mm", measured.Sport, limits => $"{limits.MaxLengthMm} mm"),
        _ => null,
    };

    public static string TooLong(string length, Sport sport, Func<SizeLimits, string> most)
    {
        var limits = SportFacts.Of(sport).Limits;
        return $"{length} is longer than the {most(limits)} of the {limits.Source}.";
    }

    private static string Unusual(decimal number, string unit, Sport sport) => $"{Formats.Number(number)} {unit} is unusual for {EnglishNames.Of(sport)}.";

    private static string Round(decimal number) => Formats.Number(Math.Round(number, 1), 1);
}
