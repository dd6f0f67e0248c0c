using Microsoft.AspNetCore.Mvc;
using TagPage.Records.PlayTime;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Hours;

public sealed class RemoveModel(HoursStore store) : RecordPage<HoursStore.Row>
{
    protected override HoursStore.Row? Find(long id) => store.Get(Who.Shop, id);

    public IActionResult OnPost() =>
        this.After(store.Remove(Who.Shop, Id), racket => this.GoOn($"/shop/rackets/{racket}#played", "The hours are removed."));
}
