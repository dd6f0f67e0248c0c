using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Settings;

public sealed class HoursModel(OpeningStore store, ShopStore shops, BenchStore bench, ShopClock clock) : PageModel
{
    [BindProperty]
    public HoursInput Input { get; set; } = new();

    public IEnumerable<ClosedDays> Closed => shops.Get().Opening.Closed.Where(days => days.ToOn >= clock.Today);

    /// <summary>Open tickets whose client was promised a day on which the shop is closed.</summary>
    public IReadOnlyList<JobRow> Promised => bench.PromisedClosed(shops.Get().Opening, clock.Today);

    public void OnGet() => Input = HoursInput.Of(shops.Get());

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.SaveWeek(User.AtShop(), Input.ToEntry()), _ => this.GoOn("/shop/settings/hours", "Your opening hours are saved."), shops.Get().Version)
        : Page();

    public IActionResult OnPostRemove(long days) =>
        this.After(store.RemoveClosed(User.AtShop(), days), _ => this.GoOn("/shop/settings/hours", "Those days are open again."));
}
