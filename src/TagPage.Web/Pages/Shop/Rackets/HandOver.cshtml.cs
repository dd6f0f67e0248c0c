using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Players;
using TagPage.Records.Rackets;
using TagPage.Records.Search;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Rackets;

public sealed class HandOverModel(RacketStore rackets, PlayerPickStore players, HandOverStore store) : PageModel
{
    [BindProperty(SupportsGet = true)]
    public string? Q { get; set; }

    [BindProperty(SupportsGet = true)]
    public long? To { get; set; }

    [BindProperty]
    public HandOverInput Input { get; set; } = new();

    public RacketStore.Row Racket { get; private set; } = new();

    public PlayerPickStore.Row? Receiver { get; private set; }

    public IReadOnlyList<PlayerPickStore.Row> Players { get; private set; } = [];

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        Input = new HandOverInput { FormKey = FormKey.New(), Version = Racket.Version, Number = Receiver?.NextNumber };
        Players = SearchWords.Of(Q) is { } words ? [.. players.Find(words).Where(p => p.Id != Racket.PlayerId)] : [];
        return Page();
    }

    public IActionResult OnPost(long id)
    {
        if (!Load(id) || Receiver is null)
            return NotFound();
        if (!ModelState.IsValid)
            return Page();
        switch (store.HandOver(Who.Shop, id, Receiver.Id, Input.ToEntry()))
        {
            case Outcome.Refused refused:
                return this.Refuse(refused, Racket.Version);
            case Outcome.Done done:
                this.Say($"{Receiver.Name} has the racket now.", "Make its new tag", $"/shop/tags/new?racket={done.Id}");
                return Redirect($"/shop/rackets/{done.Id}");
        }
        return NotFound();
    }

    private bool Load(long id)
    {
        if (rackets.Get(id) is not { } row)
            return false;
        Racket = row;
        Receiver = To is { } to ? players.Get(to) : null;
        return To is null || Receiver is not null;
    }
}
