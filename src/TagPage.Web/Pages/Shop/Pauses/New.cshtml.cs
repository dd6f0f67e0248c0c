using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.PlayTime;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Pauses;

public sealed class NewModel(PauseStore store, ShopClock clock) : PageModel
{
    [BindProperty]
    public PauseInput Input { get; set; } = new();

    public long Player { get; private set; }

    public string PlayerName { get; private set; } = "";

    public IActionResult OnGet(long player)
    {
        if (!Load(player))
            return NotFound();
        Input = new PauseInput { FormKey = FormKey.New(), FromOn = clock.Today };
        return Page();
    }

    public IActionResult OnPost(long player)
    {
        if (!Load(player))
            return NotFound();
        if (!ModelState.IsValid)
            return Page();
        switch (store.Add(player, Input.ToEntry()))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused);
        }
        this.Say("The pause is saved.");
        return Redirect($"/shop/players/{player}");
    }

    private bool Load(long player)
    {
        (Player, PlayerName) = (player, store.PlayerName(player) ?? "");
        return PlayerName.Length > 0;
    }
}
