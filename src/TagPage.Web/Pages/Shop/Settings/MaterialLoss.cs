using System.ComponentModel.DataAnnotations;
using TagPage.Core.Forecast;
using TagPage.Core.Forecast.Learning;

namespace TagPage.Web.Pages.Shop.Settings;

/// <summary>The numbers of one material in the form about tension loss, in per cent.</summary>
public sealed record MaterialLoss
{
    private const string OutOfThreshold = "Enter a loss between 1 and 90 %.";
    private const string OutOfLoss = "Enter a loss between 0.01 and 30 %.";

    [Required(ErrorMessage = OutOfThreshold), Range(StartingRanges.MinThreshold, StartingRanges.MaxThreshold, ErrorMessage = OutOfThreshold)]
    public decimal? Threshold { get; init; }

    [Required(ErrorMessage = OutOfLoss), Range(StartingRanges.MinLoss, StartingRanges.MaxLoss, ErrorMessage = OutOfLoss)]
    public decimal? Settling { get; init; }

    [Required(ErrorMessage = OutOfLoss), Range(StartingRanges.MinLoss, StartingRanges.MaxLoss, ErrorMessage = OutOfLoss)]
    public decimal? PerHour { get; init; }

    public static MaterialLoss Of(LossValues values) => new()
    {
        Threshold = (decimal)values.Threshold,
        Settling = (decimal)values.Settling,
        PerHour = (decimal)values.PerHour,
    };

    public LossValues ToValues() => new((double)Threshold!, (double)Settling!, (double)PerHour!);
}
