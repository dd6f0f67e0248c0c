using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Settings.Care;

public sealed class RemoveModel(CareGuideStore store) : RecordPage<CareGuideStore.Row>
{
    protected override CareGuideStore.Row? Find(long id) => store.Get(id);

    public void OnGet()
    {
    }

    public IActionResult OnPost() =>
        this.After(store.Remove(Who.Shop, Id), _ => this.GoOn("/shop/settings/care", $"{Saved.Title} is taken down."));
}
