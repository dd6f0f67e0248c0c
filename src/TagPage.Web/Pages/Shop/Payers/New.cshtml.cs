using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Clients;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Payers;

public sealed class NewModel(PayerStore store) : PageModel
{
    [BindProperty]
    public PayerInput Input { get; set; } = new();

    public void OnGet() => Input = new PayerInput { FormKey = FormKey.New() };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Add(User.AtShop(), Input.ToEntry()), _ => this.GoOn("/shop/payers", $"{Input.Name} can now be chosen as a client’s payer."))
        : Page();
}
