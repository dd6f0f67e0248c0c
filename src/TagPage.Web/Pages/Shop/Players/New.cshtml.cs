using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Players;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Players;

public sealed class NewModel(PlayerStore store) : PageModel
{
    [BindProperty(SupportsGet = true)]
    public long Client { get; set; }

    [BindProperty]
    public PlayerInput Input { get; set; } = new();

    public string ClientName { get; private set; } = "";

    public IActionResult OnGet()
    {
        if (!Load())
            return NotFound();
        Input = new PlayerInput { FormKey = FormKey.New() };
        return Page();
    }

    public IActionResult OnPost()
    {
        if (!Load())
            return NotFound();
        if (!ModelState.IsValid)
            return Page();
        switch (store.Add(Who.Shop, Client, Input.ToEntry()))
        {
            case Outcome.Refused refused:
                return this.Refuse(refused);
            case Outcome.Done done:
                this.Say($"{Input.Name} is on file.", "Add a racket", $"/shop/rackets/new?player={done.Id}");
                return Redirect($"/shop/clients/{Client}#player-{done.Id}");
        }
        return NotFound();
    }

    private bool Load()
    {
        ClientName = store.ClientName(Client) ?? "";
        return ClientName.Length > 0;
    }
}
