using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Readings;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Readings;

public sealed class RemoveModel(ReadingStore store) : RecordPage<ReadingRow>
{
    protected override ReadingRow? Find(long id) => store.Get(Who.Shop, id);

    public IActionResult OnPost() => this.After(store.Remove(Who.Shop, Id),
        _ => this.GoOn($"/shop/rackets/{Saved.RacketId}#readings", "The reading is removed."));
}
