using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Forecast;
using TagPage.Web.Data;
using TagPage.Web.Forms;

namespace TagPage.Web.Pages.Shop.Settings;

public sealed class LivesModel(SettingsStore store, ShopStore shops) : PageModel
{
    [BindProperty]
    public LivesInput Input { get; set; } = new();

    public bool IsDefault => shops.Get().StartingValues == StartingValues.Default;

    public void OnGet()
    {
        var shop = shops.Get();
        Input = LivesInput.Of(shop.StartingValues, shop.Version);
    }

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        if (store.SaveLives(Input.Version, Input.ToValues()) is Outcome.Refused refused)
            return this.Refuse(refused, shops.Get().Version);
        this.Say("String lives are saved; every restring-by date follows them from now on.");
        return Redirect("/shop/settings");
    }
}
