using System.ComponentModel.DataAnnotations;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>What is noted when a racket is handed out.</summary>
public sealed record HandOutInput
{
    [Required(ErrorMessage = "Enter the day it was collected.")]
    public DateOnly? CollectedOn { get; init; }

    public PayHow How { get; init; }

    /// <summary>Null for all that is open.</summary>
    public decimal? Amount { get; init; }

    public HandOutEntry ToEntry(ShopDetails shop) => new()
    {
        CollectedOn = CollectedOn!.Value,
        Payment = PaidInput.Entry(How, CollectedOn.Value, Amount, shop),
    };
}
