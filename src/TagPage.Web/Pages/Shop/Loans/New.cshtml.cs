using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Loans;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Loans;

public sealed class NewModel(LoanRacketStore store) : PageModel
{
    [BindProperty]
    public LoanRacketInput Input { get; set; } = new();

    public void OnGet() => Input = new LoanRacketInput { FormKey = FormKey.New() };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Add(User.AtShop(), Input.ToEntry()), _ => this.GoOn("/shop/loans", $"{Input.Name} is on the list."))
        : Page();
}
