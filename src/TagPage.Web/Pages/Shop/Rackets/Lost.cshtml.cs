using Microsoft.AspNetCore.Mvc;
using TagPage.Records.LostAndFound;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Rackets;

public sealed class LostModel(LostStore store, ShopClock clock) : RecordPage<LostStore.Row>
{
    [BindProperty]
    public LostInput Input { get; set; } = new();

    protected override LostStore.Row? Find(long id) => store.Get(Who.Shop, id);

    public void OnGet() => Input = new LostInput { Since = Saved.LostSince ?? clock.Today, Note = Saved.LostNote };

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        return this.After(store.Lose(Who.Shop, Id, Input.ToEntry()),
            _ => this.GoOn($"/shop/rackets/{Id}", $"{Saved.PlayerName}’s racket {Saved.Number} is marked as lost."));
    }
}
