using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Readings;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Settings.Instruments;

public sealed class NewModel(InstrumentStore store) : PageModel
{
    [BindProperty]
    public InstrumentInput Input { get; set; } = new();

    public void OnGet() => Input = new InstrumentInput { FormKey = FormKey.New() };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Add(User.AtShop(), Input.ToEntry()), _ => this.GoOn("/shop/settings/instruments", $"{Input.Name} is on the list."))
        : Page();
}
