using System.ComponentModel.DataAnnotations;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>What is noted when several rackets are handed out together.</summary>
public sealed record PickUpInput
{
    public string FormKey { get; init; } = "";

    [Required(ErrorMessage = "Enter the day they were collected.")]
    public DateOnly? CollectedOn { get; init; }

    /// <summary>Of the rackets that are ticked.</summary>
    public List<long> Jobs { get; init; } = [];

    public PayHow How { get; init; }

    /// <summary>Null for all that is open.</summary>
    public decimal? Amount { get; init; }

    public PickUpEntry ToEntry(ShopDetails shop) => new()
    {
        FormKey = FormKey,
        CollectedOn = CollectedOn!.Value,
        Jobs = Jobs,
        Payment = PaidInput.Entry(How, CollectedOn.Value, Amount, shop),
    };
}
