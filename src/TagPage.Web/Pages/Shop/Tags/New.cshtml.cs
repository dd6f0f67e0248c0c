using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Rackets;
using TagPage.Records.Tags;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Tags;

/// <summary>A tag for the racket that is named in the query.</summary>
public sealed class NewModel(TagStore store, RacketStore rackets) : RecordPage<RacketStore.Row>
{
    [BindProperty(SupportsGet = true)]
    public long Racket { get; set; }

    [BindProperty]
    public string FormKey { get; set; } = "";

    protected override long Asked => Racket;

    protected override RacketStore.Row? Find(long id) => rackets.Get(id);

    public void OnGet() => FormKey = Records.Storage.FormKey.New();

    public IActionResult OnPost() => this.After(store.Make(User.AtShop(), Racket, FormKey ?? ""),
        _ => this.GoOn($"/shop/rackets/{Racket}#tag", "The tag is live. Print its square and stick it on."));
}
