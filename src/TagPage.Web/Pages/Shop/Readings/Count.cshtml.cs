using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Readings;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Readings;

/// <summary>A reading that looked like a slip was none.</summary>
public sealed class CountModel(ReadingStore store) : RecordPage<ReadingRow>
{
    protected override ReadingRow? Find(long id) => store.Get(User.AtShop(), id) is { Doubtful: true } reading ? reading : null;

    public IActionResult OnPost() => this.After(store.Count(User.AtShop(), Id),
        racket => this.GoOn($"/shop/rackets/{racket}#readings", "The reading counts."));
}
