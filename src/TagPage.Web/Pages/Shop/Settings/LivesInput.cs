using System.ComponentModel.DataAnnotations;
using TagPage.Core.Forecast;

namespace TagPage.Web.Pages.Shop.Settings;

/// <summary>What the form about string lives posts: every number of the forecast that the shop can change.</summary>
public sealed record LivesInput
{
    private const string Factor = "Enter a factor between 0.25 and 4.";

    public int Version { get; init; }

    public SportLives Tennis { get; init; } = new();

    public SportLives Badminton { get; init; } = new();

    public SportLives Squash { get; init; } = new();

    [Required(ErrorMessage = Factor), Range(StartingRanges.MinFactor, StartingRanges.MaxFactor, ErrorMessage = Factor)]
    public decimal? Easy { get; init; }

    [Required(ErrorMessage = Factor), Range(StartingRanges.MinFactor, StartingRanges.MaxFactor, ErrorMessage = Factor)]
    public decimal? Average { get; init; }

    [Required(ErrorMessage = Factor), Range(StartingRanges.MinFactor, StartingRanges.MaxFactor, ErrorMessage = Factor)]
    public decimal? Hard { get; init; }

    [Required(ErrorMessage = "Enter a number between 0 and 1.")]
    [Range(StartingRanges.MinSpareWeight, StartingRanges.MaxSpareWeight, ErrorMessage = "Enter a number between 0 and 1.")]
    public decimal? SpareWeight { get; init; }

    [Required(ErrorMessage = "Enter a number of days between 0 and 60.")]
    [Range(StartingRanges.MinDueSoonDays, StartingRanges.MaxDueSoonDays, ErrorMessage = "Enter a number of days between 0 and 60.")]
    public int? DueSoonDays { get; init; }

    [Required(ErrorMessage = "Enter a whole number between 1 and 10.")]
    [Range(StartingRanges.MinLastOneIn, StartingRanges.MaxLastOneIn, ErrorMessage = "Enter a whole number between 1 and 10.")]
    public int? LastOneIn { get; init; }

    [Required(ErrorMessage = "Enter a number of days between 30 and 3650.")]
    [Range(StartingRanges.MinLargestAge, StartingRanges.MaxLargestAge, ErrorMessage = "Enter a number of days between 30 and 3650.")]
    public int? LargestAgeDays { get; init; }

    public static LivesInput Of(StartingValues values, int version) => new()
    {
        Version = version,
        Tennis = SportLives.Of(values.Tennis),
        Badminton = SportLives.Of(values.Badminton),
        Squash = SportLives.Of(values.Squash),
        Easy = (decimal)values.Hitting.Easy,
        Average = (decimal)values.Hitting.Average,
        Hard = (decimal)values.Hitting.Hard,
        SpareWeight = (decimal)values.SpareWeight,
        DueSoonDays = values.DueSoon.Days,
        LastOneIn = values.DueSoon.LastOneIn,
        LargestAgeDays = values.LargestAgeDays,
    };

    /// <summary>The values with these in place of theirs.</summary>
    public StartingValues On(StartingValues values) => values with
    {
        Tennis = Tennis.ToValues(),
        Badminton = Badminton.ToValues(),
        Squash = Squash.ToValues(),
        Hitting = new HittingValues { Easy = (double)Easy!, Average = (double)Average!, Hard = (double)Hard! },
        SpareWeight = (double)SpareWeight!,
        LargestAgeDays = LargestAgeDays!.Value,
        DueSoon = new DueSoonValues { Days = DueSoonDays!.Value, LastOneIn = LastOneIn!.Value },
    };
}
