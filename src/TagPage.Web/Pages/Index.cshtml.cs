using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages;

public sealed class IndexModel(ShopStore shops) : PageModel
{
    public ShopDetails Shop => shops.Get();
}
