using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Settings.Care;

public sealed class RemoveModel(CareGuideStore store) : RecordPage<CareGuideStore.Row>
{
    protected override CareGuideStore.Row? Find(long id) => store.Get(id);

    public void OnGet()
    {
    }

    public IActionResult OnPost() =>
        this.After(store.Remove(User.AtShop(), Id), _ => this.GoOn("/shop/settings/care", $"{Saved.Title} is taken down."));
}
