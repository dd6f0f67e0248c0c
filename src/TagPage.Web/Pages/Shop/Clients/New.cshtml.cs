using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Clients;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Clients;

public sealed class NewModel(ClientStore store) : PageModel
{
    [BindProperty]
    public ClientInput Input { get; set; } = new();

    public void OnGet() => Input = new ClientInput { FormKey = FormKey.New() };

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid || this.Asks(ClientQuestions.Of(store.ReachedLike(Input.FormKey, Input.Phone, Input.Mail)), Input.Confirmed))
            return Page();
        switch (store.Add(Input.ToEntry()))
        {
            case Outcome.Refused refused:
                return this.Refuse(refused);
            case Outcome.Done done:
                this.Say($"{Input.Name} is on file.", "Add a player", $"/shop/players/new?client={done.Id}");
                return Redirect($"/shop/clients/{done.Id}");
        }
        return NotFound();
    }
}
