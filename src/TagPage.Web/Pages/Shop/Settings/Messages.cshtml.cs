using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Settings;

public sealed class MessagesModel(SettingsStore store, ShopStore shops) : PageModel
{
    [BindProperty]
    public MessagesInput Input { get; set; } = new();

    public void OnGet() => Input = MessagesInput.Of(shops.Get());

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.SaveMessages(User.AtShop(), Input.ToEntry()), _ => this.GoOn("/shop/settings", "The messages are saved."), shops.Get().Version)
        : Page();
}
