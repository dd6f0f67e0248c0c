using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Tags;
using TagPage.Records.Search;
using TagPage.Records.Tags;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Tags;

public sealed class LinkModel(TagStore store, RacketPickStore rackets) : KeyPage<TagStore.Row>("code")
{
    [BindProperty(SupportsGet = true)]
    public string? Q { get; set; }

    [BindProperty(SupportsGet = true)]
    public long? Racket { get; set; }

    public RacketPickStore.Row? Picked { get; private set; }

    public IReadOnlyList<RacketPickStore.Row> Rackets => Q is null ? rackets.Recent() : SearchWords.Of(Q) is { } words ? rackets.Find(words) : [];

    public string Why => Saved.State == TagState.Retired
        ? "This tag was retired for good. Use another one."
        : $"This tag is already on {Saved.PlayerName}’s racket {Saved.Number}.";

    protected override TagStore.Row? Find(string key)
    {
        Picked = Racket is { } id ? rackets.Get(id) : null;
        return TagCode.Read(key).Code is { } code && (Racket is null || Picked is not null) ? store.Get(code) : null;
    }

    public void OnGet()
    {
    }

    public IActionResult OnPost() => Picked is null
        ? NotFound()
        : this.After(store.Link(User.AtShop(), Saved.Code, Picked.Id), racket =>
            this.GoOn($"/shop/rackets/{racket}", $"Tag {Saved.Code.Display} now opens {Picked.PlayerName}’s racket {Picked.Number}."));
}
