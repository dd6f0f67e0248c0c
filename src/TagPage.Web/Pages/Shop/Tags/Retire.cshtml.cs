using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Tags;
using TagPage.Records.Tags;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Tags;

public sealed class RetireModel(TagStore store) : KeyPage<TagStore.Row>("code")
{
    private string Racket => $"/shop/rackets/{Saved.RacketId}#tag";

    protected override TagStore.Row? Find(string key) =>
        TagCode.Read(key).Code is { } code && store.Get(code) is { RacketId: not null } row ? row : null;

    public IActionResult OnGet() => Saved.State == TagState.Live ? Page() : Redirect(Racket);

    public IActionResult OnPost() =>
        this.After(store.Retire(User.AtShop(), Saved.Code), _ => this.GoOn(Racket, $"Tag {Saved.Code.Display} is retired."));
}
