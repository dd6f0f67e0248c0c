using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Money;

public sealed class IndexModel(OwedStore owed, ShopStore shops, ShopClock clock) : PageModel
{
    public IReadOnlyList<OwedStore.Row> Rows { get; private set; } = [];

    public ShopDetails Shop => shops.Get();

    public int DaysSince(DateOnly day) => clock.Today.DayNumber - day.DayNumber;

    public void OnGet() => Rows = owed.List(User.AtShop());
}
