using System.ComponentModel.DataAnnotations;
using TagPage.Records.Labels;

namespace TagPage.Web.Pages.Shop.Labels;

/// <summary>How to print a label that no record stands behind.</summary>
public record PlainInput
{
    [StringLength(20, ErrorMessage = "Keep the colour within 20 characters.")]
    public string? TapeColour { get; init; }

    [Range(6.0, 50.0, ErrorMessage = "Enter a length in mm from {1} to {2}.")]
    public decimal? TapeMm { get; init; }

    [StringLength(20, ErrorMessage = "Keep the ink within 20 characters.")]
    public string? InkColour { get; init; }

    [Required(ErrorMessage = "Enter how many copies."), Range(1, 50, ErrorMessage = "Enter a number from 1 to 50.")]
    public int? Copies { get; init; } = 1;

    public LabelPages Pages { get; init; }

    public LabelEntry ToEntry() => new() { TapeColour = TapeColour, TapeMm = TapeMm, InkColour = InkColour, Pages = Pages };
}
