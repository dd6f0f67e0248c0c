using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Settings;

public sealed class MessagesModel(SettingsStore store, ShopStore shops) : PageModel
{
    [BindProperty]
    public MessagesInput Input { get; set; } = new();

    public void OnGet() => Input = MessagesInput.Of(shops.Get());

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.SaveMessages(Who.Shop, Input.ToEntry()), _ => this.GoOn("/shop/settings", "The messages are saved."), shops.Get().Version)
        : Page();
}
