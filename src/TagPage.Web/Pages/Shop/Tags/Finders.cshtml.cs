using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Tags;
using TagPage.Records.Tags;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Tags;

/// <summary>Closes a live tag's found page, or opens it again.</summary>
public sealed class FindersModel(TagStore store) : KeyPage<TagStore.Row>("code")
{
    protected override TagStore.Row? Find(string key) =>
        TagCode.Read(key).Code is { } code && store.Get(code) is { State: TagState.Live } row ? row : null;

    public void OnGet()
    {
    }

    public IActionResult OnPost(bool block) => this.After(store.BlockFinders(User.AtShop(), Saved.Code, block), _ => this.GoOn(
        $"/shop/rackets/{Saved.RacketId}#tag",
        block ? $"Tag {Saved.Code.Display} gives finders only the shop’s contact details." : $"Tag {Saved.Code.Display} is open to finders again."));
}
