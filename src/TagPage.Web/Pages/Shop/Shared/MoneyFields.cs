using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Money;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Shared;

/// <summary>Amounts as they are typed, in the shop's currency.</summary>
internal static class MoneyFields
{
    /// <summary>In minor units; null where nothing was typed, and where it is no amount, which is noted beside the field.</summary>
    /// <param name="page">Shows the field.</param>
    /// <param name="field">Without "Input.".</param>
    /// <param name="typed">As it was typed.</param>
    /// <param name="shop">Whose currency it is.</param>
    /// <param name="mayBeBelowZero">A discount may.</param>
    public static long? Minor(this PageModel page, string field, decimal? typed, ShopDetails shop, bool mayBeBelowZero = false)
    {
        if (typed is not { } amount)
            return null;
        var minor = mayBeBelowZero ? MinorUnits.OfSigned(amount, shop.Currency) : MinorUnits.Of(amount, shop.Currency);
        if (minor is null)
            page.Refuse(new FieldFault(field, $"Enter an amount in {shop.Currency}{Finer(amount, shop)} like {Formats.Amount(2450, shop)}."));
        return minor;
    }

    private static string Finer(decimal amount, ShopDetails shop) => decimal.Round(amount, MinorUnits.Places(shop.Currency)) == amount ? "" : MinorUnits.Places(shop.Currency) switch
    {
        0 => " without decimals,",
        2 => " with two decimals at most,",
        _ => " with three decimals at most,",
    };

    public static decimal? Amount(long? minor, ShopDetails shop) => minor is { } known ? MinorUnits.ToAmount(known, shop.Currency) : null;
}
