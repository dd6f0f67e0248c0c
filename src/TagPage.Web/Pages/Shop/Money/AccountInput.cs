using System.ComponentModel.DataAnnotations;
using TagPage.Core.Money;

namespace TagPage.Web.Pages.Shop.Money;

/// <summary>What somebody pays on their account.</summary>
public sealed record AccountInput
{
    public string FormKey { get; init; } = "";

    [Required(ErrorMessage = "Enter the day it was paid.")]
    public DateOnly? PaidOn { get; init; }

    public PaymentMethod? How { get; init; }

    public decimal? Amount { get; init; }

    [StringLength(120, ErrorMessage = "Keep the note within 120 characters.")]
    public string? Note { get; init; }
}
