using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.LostAndFound;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Rackets;

public sealed class LostModel(LostStore store, ShopClock clock) : PageModel
{
    [BindProperty]
    public LostInput Input { get; set; } = new();

    public long Id { get; private set; }

    public LostStore.Row Saved { get; private set; } = new();

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        Input = new LostInput { Since = Saved.LostSince ?? clock.Today, Note = Saved.LostNote };
        return Page();
    }

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        if (!ModelState.IsValid)
            return Page();
        switch (store.Lose(Who.Shop, id, Input.ToEntry()))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused);
        }
        this.Say($"Racket {Saved.Number} of {Saved.PlayerName} is marked as lost.");
        return Redirect($"/shop/rackets/{id}");
    }

    private bool Load(long id)
    {
        if (store.Get(Who.Shop, id) is not { } row)
            return false;
        (Id, Saved) = (id, row);
        return true;
    }
}
