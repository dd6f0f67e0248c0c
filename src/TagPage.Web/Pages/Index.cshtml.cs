using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Data;

namespace TagPage.Web.Pages;

public sealed class IndexModel(ShopStore shops) : PageModel
{
    public ShopDetails Shop => shops.Get();
}
