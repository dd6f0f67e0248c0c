using System.ComponentModel.DataAnnotations;
using TagPage.Core.Money;
using TagPage.Records.Money;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>A payment for one job.</summary>
public sealed record PaidInput
{
    public string FormKey { get; init; } = "";

    [Required(ErrorMessage = "Enter the day it was paid.")]
    public DateOnly? PaidOn { get; init; }

    public PayHow How { get; init; }

    /// <summary>Null for all that is open.</summary>
    public decimal? Amount { get; init; }

    public PaymentEntry ToEntry(ShopDetails shop) => Entry(How == PayHow.Account ? PayHow.Cash : How, PaidOn!.Value, Amount, shop)! with { FormKey = FormKey };

    /// <summary>Null where nothing is paid now. What is no amount of the currency is refused as one of nothing.</summary>
    internal static PaymentEntry? Entry(PayHow how, DateOnly paidOn, decimal? amount, ShopDetails shop) => how == PayHow.Account ? null : new PaymentEntry
    {
        PaidOn = paidOn,
        Method = how switch
        {
            PayHow.Cash => PaymentMethod.Cash,
            PayHow.Card => PaymentMethod.Card,
            PayHow.Transfer => PaymentMethod.Transfer,
            _ => null,
        },
        AmountMinor = amount is { } typed ? Currencies.ToMinor(typed, shop.Currency) ?? 0 : null,
    };
}
