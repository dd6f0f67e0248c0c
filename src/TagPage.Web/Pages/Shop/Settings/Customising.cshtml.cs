using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Settings;

public sealed class CustomisingModel(SettingsStore store, ShopStore shops) : PageModel
{
    [BindProperty]
    public CustomisingInput Input { get; set; } = new();

    public void OnGet() => Input = CustomisingInput.Of(shops.Get().CustomisingValues, shops.Get().Version);

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.SaveCustomising(User.AtShop(), Input.Version, Input.ToValues()),
            _ => this.GoOn("/shop/settings", "Measuring and customising are saved."), shops.Get().Version)
        : Page();
}
