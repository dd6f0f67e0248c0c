using System.ComponentModel.DataAnnotations;
using System.Globalization;
using TagPage.Core.Customising;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Rackets;

/// <summary>What a stop-watch showed: taps on one button, or the times of whole rounds.</summary>
public sealed record SwingTimesInput : IValidatableObject
{
    private const int MostTimes = 400;

    // As the form that keeps it.
    private const double ShortestS = 0.3, LongestS = 5;

    [Range(1, 200, ErrorMessage = "Enter 1 to 200 swings.")]
    public int? Swings { get; init; } = 20;

    [StringLength(4000, ErrorMessage = "Keep the times within 4,000 characters.")]
    [DataType(DataType.MultilineText)]
    public string? Taps { get; init; }

    [StringLength(400, ErrorMessage = "Keep the times within 400 characters.")]
    public string? Rounds { get; init; }

    public bool IsEmpty => Taps is null && Rounds is null;

    /// <summary>Where the times come from: taps count before rounds.</summary>
    public string TimesField => Read(Taps) is { Count: > 0 } ? nameof(Taps) : nameof(Rounds);

    public SwingTimes? Timed => Read(Taps) is { Count: > 0 } taps ? SwingTimes.OfTaps(taps)
        : Read(Rounds) is { Count: > 0 } rounds && Swings is { } swings ? SwingTimes.OfRounds(swings, rounds) : null;

    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if (IsEmpty)
            yield break;
        if (Read(Taps) is not { } taps || taps.Zip(taps.Skip(1)).Any(pair => pair.Second < pair.First))
            yield return new ValidationResult("Enter the seconds of each tap, one a line, rising, like 1.42.", [nameof(Taps)]);
        else if (Read(Rounds) is not { } rounds || rounds.Any(round => round <= 0))
            yield return new ValidationResult("Enter the seconds of each round, with spaces between them, like 28.4 28.6.", [nameof(Rounds)]);
        else if (Timed is null)
            yield return new ValidationResult($"Tap at least {SwingTimes.FewestTaps} times, better twenty.", [nameof(Taps)]);
        else if (Timed.PeriodS.Value is (< ShortestS or > LongestS) and var period)
            yield return new ValidationResult(
                $"One swing there and back takes between {ShortestS} and {LongestS} s; these times make it {SpecWords.Number(period, 3)} s. Check the number of swings in a round.",
                [TimesField]);
    }

    private static List<double>? Read(string? typed)
    {
        List<double> times = [];
        foreach (var word in (typed ?? "").Split([' ', '\n', '\r', '\t', ';'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (times.Count == MostTimes || !double.TryParse(word.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var time) || time > 3600)
                return null;
            times.Add(time);
        }
        return times;
    }
}
