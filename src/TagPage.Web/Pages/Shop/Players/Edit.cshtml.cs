using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Players;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Players;

public sealed class EditModel(PlayerStore store) : PageModel
{
    [BindProperty]
    public PlayerInput Input { get; set; } = new();

    public PlayerStore.Row Saved { get; private set; } = new();

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        Input = new PlayerInput
        {
            Version = Saved.Version,
            Name = Saved.Name,
            Junior = Saved.Junior,
            TimesAWeek = Saved.TimesAWeek,
            HoursATime = Saved.HoursATime,
            Hitting = Saved.Hitting,
            Rule = Saved.Rule,
            EveryWeeks = Saved.EveryWeeks,
            Note = Saved.Note,
        };
        return Page();
    }

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        if (!ModelState.IsValid)
            return Page();
        switch (store.Change(Who.Shop, id, Input.ToEntry()))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused, Saved.Version);
        }
        this.Say($"{Input.Name} is saved.");
        return Redirect($"/shop/clients/{Saved.ClientId}#player-{id}");
    }

    private bool Load(long id)
    {
        if (store.Get(id) is not { } row)
            return false;
        Saved = row;
        return true;
    }
}
