using Microsoft.AspNetCore.Mvc;
using TagPage.Records.LostAndFound;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Rackets;

public sealed class LostModel(LostStore store, ShopClock clock) : RecordPage<LostStore.Row>
{
    [BindProperty]
    public LostInput Input { get; set; } = new();

    protected override LostStore.Row? Find(long id) => store.Get(User.AtShop(), id);

    public void OnGet() => Input = new LostInput { Since = Saved.LostSince ?? clock.Today, Note = Saved.LostNote };

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        return this.After(store.Lose(User.AtShop(), Id, Input.ToEntry()),
            _ => this.GoOn($"/shop/rackets/{Id}", $"{Saved.PlayerName}’s racket {Saved.Number} is marked as lost."));
    }
}
