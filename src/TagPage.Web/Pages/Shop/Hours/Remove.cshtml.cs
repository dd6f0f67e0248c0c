using Microsoft.AspNetCore.Mvc;
using TagPage.Records.PlayTime;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Hours;

public sealed class RemoveModel(HoursStore store) : RecordPage<HoursStore.Row>
{
    protected override HoursStore.Row? Find(long id) => store.Get(User.AtShop(), id);

    public IActionResult OnPost() =>
        this.After(store.Remove(User.AtShop(), Id), racket => this.GoOn($"/shop/rackets/{racket}#played", "The hours are removed."));
}
