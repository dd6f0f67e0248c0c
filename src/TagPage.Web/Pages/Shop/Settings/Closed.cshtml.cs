using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Settings;

public sealed class ClosedModel(OpeningStore store) : PageModel
{
    [BindProperty]
    public ClosedInput Input { get; set; } = new();

    public void OnGet() => Input = new ClosedInput { FormKey = FormKey.New() };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.AddClosed(Who.Shop, Input.ToEntry()), _ => this.GoOn("/shop/settings/hours", "The closed days are saved."))
        : Page();
}
