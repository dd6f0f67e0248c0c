using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Forecast;
using TagPage.Records.Shop;
using TagPage.Web.Http;

namespace TagPage.Web.Pages.Shop.Settings;

public sealed class IndexModel(ShopStore shops, PublicAddress address) : PageModel
{
    public ShopDetails Shop => shops.Get();

    public PublicAddress Address => address;

    public bool HasOwnLives => Shop.StartingValues != StartingValues.Default;
}
