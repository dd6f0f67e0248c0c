using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Papers;

namespace TagPage.Web.Pages.Shop.Money;

public sealed class FiguresModel(FigureStore figures, ShopStore shops, ShopClock clock) : PageModel
{
    private const int Last = 9998;

    /// <summary>Null, and what no calendar has, for this one.</summary>
    [BindProperty(SupportsGet = true, Name = "year")]
    public int? Asked { get; set; }

    public int Year => Asked <= Last && Asked >= ShopClock.Earliest.Year ? Asked.Value : clock.Today.Year;

    public ShopDetails Shop => shops.Get();

    public int ThisYear => clock.Today.Year;

    public IReadOnlyList<FigureStore.Month> Months => figures.Year(User.AtShop(), Year);

    public IReadOnlyList<FigureStore.StringUse> Strings => figures.Strings(User.AtShop(), Year);

    public IReadOnlyList<FigureStore.Away> Away => figures.StayAway(User.AtShop(), clock.Today.AddMonths(-Shop.UnseenMonths));

    public void OnGet()
    {
    }

    public IActionResult OnGetPayments() => Csv("payments", AccountantCsv.Payments(figures.Payments(User.AtShop(), Year), Shop));

    public IActionResult OnGetCharges() => Csv("charges", AccountantCsv.Charges(figures.Charges(User.AtShop(), Year), Shop));

    private FileContentResult Csv(string name, byte[] bytes) => File(bytes, "text/csv; charset=utf-8", string.Create(CultureInfo.InvariantCulture, $"{name}-{Year}.csv"));
}
