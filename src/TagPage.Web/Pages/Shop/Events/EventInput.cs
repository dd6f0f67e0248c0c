using System.ComponentModel.DataAnnotations;
using TagPage.Records.Events;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Events;

/// <summary>What the forms of an event post.</summary>
public sealed record EventInput
{
    public string FormKey { get; init; } = "";

    public int Version { get; init; }

    [Required(ErrorMessage = "Enter what the event is called.")]
    [StringLength(80, ErrorMessage = "Keep the name within 80 characters.")]
    public string? Name { get; init; }

    [StringLength(60, ErrorMessage = "Keep the place within 60 characters.")]
    public string? Place { get; init; }

    [Required(ErrorMessage = "Enter the first day.")]
    public DateOnly? FromOn { get; init; }

    public DateOnly? ToOn { get; init; }

    [StringLength(20, ErrorMessage = "Keep the colour within 20 characters.")]
    public string? LabelTape { get; init; }

    public decimal? PriceOwn { get; init; }

    public decimal? PriceDesk { get; init; }

    public EventEntry ToEntry() => new()
    {
        FormKey = FormKey,
        Version = Version,
        Name = Name!,
        Place = Place,
        FromOn = FromOn!.Value,
        ToOn = ToOn,
        LabelTape = LabelTape,
        PriceOwn = PriceOwn,
        PriceDesk = PriceDesk,
    };

    public static EventInput Of(EventRow row, ShopDetails shop) => new()
    {
        Version = row.Version,
        Name = row.Name,
        Place = row.Place,
        FromOn = row.FromOn,
        ToOn = row.ToOn,
        LabelTape = row.LabelTape,
        PriceOwn = Amount(row.PriceOwnMinor, shop),
        PriceDesk = Amount(row.PriceDeskMinor, shop),
    };

    private static decimal? Amount(long? minor, ShopDetails shop) => minor is { } known ? Currencies.ToAmount(known, shop.Currency) : null;
}
