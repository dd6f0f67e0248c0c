using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Readings;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Readings;

public sealed class RemoveModel(ReadingStore store) : RecordPage<ReadingRow>
{
    protected override ReadingRow? Find(long id) => store.Get(User.AtShop(), id);

    public IActionResult OnPost() => this.After(store.Remove(User.AtShop(), Id),
        _ => this.GoOn($"/shop/rackets/{Saved.RacketId}#readings", "The reading is removed."));
}
