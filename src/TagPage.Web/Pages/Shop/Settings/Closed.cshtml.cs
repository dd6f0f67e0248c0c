using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Settings;

public sealed class ClosedModel(OpeningStore store, BenchStore bench, ShopStore shops, ShopClock clock) : PageModel
{
    [BindProperty]
    public ClosedInput Input { get; set; } = new();

    public void OnGet() => Input = new ClosedInput { FormKey = FormKey.New() };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.AddClosed(User.AtShop(), Input.ToEntry()), _ => this.GoOn("/shop/settings/hours", $"The closed days are saved.{Promised()}"))
        : Page();

    private string Promised() => bench.PromisedClosed(shops.Get().Opening, clock.Today).Count switch
    {
        0 => "",
        1 => " 1 open ticket is promised for a closed day, see below.",
        var many => $" {many} open tickets are promised for a closed day, see below.",
    };
}
