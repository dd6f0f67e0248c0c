using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Shop;
using TagPage.Web.Http;

namespace TagPage.Web.Pages.Shop.Settings;

public sealed class AddressModel(PublicAddress address, UsedAddressStore used, ShopClock clock) : PageModel
{
    public PublicAddress Address => address;

    /// <summary>Addresses that labels may still carry.</summary>
    public IReadOnlyList<(string Base, DateOnly From, DateOnly To)> Earlier =>
        [.. used.EarlierThan(address.Base).Select(a => (a.Base, clock.DayOf(a.FirstAt), clock.DayOf(a.LastAt)))];

    /// <summary>What a label carries, with an example in place of a code.</summary>
    public string OnLabels => address.Of("/t/7K2M9Q4TXAV").ToUpperInvariant();
}
