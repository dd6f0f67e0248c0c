using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Settings;

public sealed class ShopModel(SettingsStore store, ShopStore shops) : PageModel
{
    [BindProperty]
    public ShopInput Input { get; set; } = new();

    public void OnGet() => Input = ShopInput.Of(shops.Get());

    public IActionResult OnPost() => ModelState.IsValid && !this.Asks(OtherCurrency, Input.Confirmed)
        ? this.After(store.SaveShop(User.AtShop(), Input.ToEntry()), _ => this.GoOn("/shop/settings", "The shop’s details are saved."), shops.Get().Version)
        : Page();

    private IEnumerable<Oddity> OtherCurrency =>
        Input.Currency is { } now && shops.Get().Currency is { } was && was != now && shops.HasMoney() ? [new CurrencyChanges(was, now)] : [];
}
