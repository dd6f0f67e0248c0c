using TagPage.Core.Sports;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Rackets;

/// <summary>Measured numbers that are possible but unusual for their sport. The ranges are from memory, wide on purpose.</summary>
public static class SpecQuestions
{
    private sealed record Usual(decimal MinG, decimal MaxG, decimal MinBalanceMm, decimal MaxBalanceMm, decimal MinSwing, decimal MaxSwing);

    private static Usual Of(Sport sport) => sport switch
    {
        Sport.Tennis => new(180, 400, 260, 400, 180, 400),
        Sport.Badminton => new(65, 125, 250, 340, 60, 130),
        _ => new(90, 255, 250, 420, 80, 240),
    };

    public static IReadOnlyList<Question> Of(Sport sport, DateOnly today, SpecInput input)
    {
        var usual = Of(sport);
        Question?[] questions =
        [
            Outside(nameof(input.WeightG), input.WeightG, usual.MinG, usual.MaxG, "g", sport),
            Outside(nameof(input.BalanceMm), input.BalanceMm, usual.MinBalanceMm, usual.MaxBalanceMm, "mm from the butt", sport),
            Outside(nameof(input.SwingWeight), input.SwingWeight, usual.MinSwing, usual.MaxSwing, "kg·cm²", sport),
            TooLong(sport, input.LengthMm),
            input.MeasuredOn > today ? new Question(nameof(input.MeasuredOn), $"{Formats.Day(input.MeasuredOn)} is in the future. Correct it, or tick below to keep it.") : null,
        ];
        return [.. questions.OfType<Question>()];
    }

    private static Question? Outside(string field, decimal? value, decimal min, decimal max, string unit, Sport sport) =>
        value is { } number && (number < min || number > max)
            ? new Question(field, $"{Formats.Number(number)} {unit} is unusual for {EnglishNames.Of(sport)}. Measure again, or tick below to keep it.")
            : null;

    private static Question? TooLong(Sport sport, decimal? lengthMm)
    {
        var limits = SportFacts.Of(sport).Limits;
        return lengthMm > limits.MaxLengthMm
            ? new Question(nameof(SpecInput.LengthMm), $"{Formats.Number(lengthMm.Value)} mm is longer than the {limits.MaxLengthMm} mm of the {limits.Source}. Correct it, or tick below to keep it.")
            : null;
    }
}
