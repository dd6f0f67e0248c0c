using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Clients;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Clients;

public sealed class NewModel(ClientStore store) : PageModel
{
    [BindProperty]
    public ClientInput Input { get; set; } = new();

    public void OnGet() => Input = new ClientInput { FormKey = FormKey.New() };

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid || this.Asks(store.ReachedLike(Input.FormKey, Input.Phone, Input.Mail), Input.Confirmed))
            return Page();
        return this.After(store.Add(User.AtShop(), Input.ToEntry()), id =>
        {
            this.Say($"{Input.Name} is on file.", "Add a player", $"/shop/players/new?client={id}");
            return Redirect($"/shop/clients/{id}");
        });
    }
}
