using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Settings;

public sealed class ShopModel(SettingsStore store, ShopStore shops) : PageModel
{
    [BindProperty]
    public ShopInput Input { get; set; } = new();

    public void OnGet() => Input = ShopInput.Of(shops.Get());

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        if (store.SaveShop(Input.ToEntry()) is Outcome.Refused refused)
            return this.Refuse(refused, shops.Get().Version);
        this.Say("The shop's details are saved.");
        return Redirect("/shop/settings");
    }
}
