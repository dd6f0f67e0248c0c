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

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        if (store.SaveMessages(Input.ToEntry()) is Outcome.Refused refused)
            return this.Refuse(refused, shops.Get().Version);
        this.Say("The messages are saved.");
        return Redirect("/shop/settings");
    }
}
