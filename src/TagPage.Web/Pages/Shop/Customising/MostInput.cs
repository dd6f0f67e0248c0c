using System.ComponentModel.DataAnnotations;

namespace TagPage.Web.Pages.Shop.Customising;

/// <summary>What a place carries at most in one plan, in the shop's unit.</summary>
public sealed record MostInput
{
    public string Place { get; init; } = "";

    [Range(0.0, 100.0, ErrorMessage = "Enter what this place carries at most: 100 g or less.")]
    public decimal? Weight { get; init; }
}
