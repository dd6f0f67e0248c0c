using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Tags;
using TagPage.Records.Tags;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Tags;

public sealed class ReplaceModel(TagStore store) : KeyPage<TagStore.Row>("code")
{
    [BindProperty]
    public string FormKey { get; set; } = "";

    private string Racket => $"/shop/rackets/{Saved.RacketId}#tag";

    protected override TagStore.Row? Find(string key) =>
        TagCode.Read(key).Code is { } code && store.Get(code) is { RacketId: not null } row ? row : null;

    public IActionResult OnGet()
    {
        if (Saved.State != TagState.Live)
            return Redirect(Racket);
        FormKey = Records.Storage.FormKey.New();
        return Page();
    }

    public IActionResult OnPost() => this.After(store.Replace(User.AtShop(), Saved.Code, FormKey ?? ""),
        _ => this.GoOn(Racket, $"Tag {Saved.Code.Display} is retired and a new one is live. Print its square and stick it on."));
}
