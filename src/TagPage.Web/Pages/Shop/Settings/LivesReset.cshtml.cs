using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Forecast;
using TagPage.Records.DueDates;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Settings;

public sealed class LivesResetModel(SettingsStore store, DateEffectStore effects, ShopStore shops) : PageModel
{
    [BindProperty]
    public int Version { get; set; }

    public DateEffect Effect => effects.Of(StartingValues.Default);

    public void OnGet() => Version = shops.Get().Version;

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.SaveLives(User.AtShop(), Version, StartingValues.Default),
            _ => this.GoOn("/shop/settings/lives", "String lives are back at the starting values."))
        : Page();
}
