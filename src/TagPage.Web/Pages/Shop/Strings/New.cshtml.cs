using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Storage;
using TagPage.Records.Strings;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Strings;

public sealed class NewModel(StringStore store) : PageModel
{
    [BindProperty]
    public StringInput Input { get; set; } = new();

    public void OnGet() => Input = new StringInput { FormKey = FormKey.New() };

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        if (store.Add(User.AtShop(), Input.ToEntry()) is Outcome.Refused refused)
            return this.Refuse(refused);
        this.Say($"{Input.Name} is in the catalogue.");
        return Redirect("/shop/strings");
    }
}
