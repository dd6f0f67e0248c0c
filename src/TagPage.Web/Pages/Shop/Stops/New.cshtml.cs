using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Stops;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Stops;

public sealed class NewModel(StopStore store) : PageModel
{
    [BindProperty]
    public StopInput Input { get; set; } = new();

    public void OnGet() => Input = new StopInput { FormKey = FormKey.New() };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Add(User.AtShop(), Input.ToEntry()), _ => this.GoOn("/shop/stops", $"{Input.Name} is on the list. New tickets now ask where the racket was left."))
        : Page();
}
