using System.ComponentModel.DataAnnotations;
using TagPage.Core.Money;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Prepaid;

/// <summary>What the form to sell prepaid restrings posts.</summary>
public sealed record SellInput
{
    public string FormKey { get; init; } = "";

    [Required(ErrorMessage = "Enter how many restrings.")]
    public int? Restrings { get; init; }

    [Required(ErrorMessage = "Enter what all of them cost.")]
    public decimal? Amount { get; init; }

    public PrepaidCover Covers { get; init; }

    [Required(ErrorMessage = "Enter the day it was paid.")]
    [LikelyYear]
    public DateOnly? BoughtOn { get; init; }

    public PaymentMethod How { get; init; }

    [StringLength(120, ErrorMessage = "Keep the note within 120 characters.")]
    public string? Note { get; init; }
}
