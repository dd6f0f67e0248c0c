using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Labels;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Labels;

public sealed class IndexModel(LabelStore labels, LabelSettingsStore settings, ShopClock clock) : PageModel
{
    public int Today => labels.StrungOn(clock.Today).Count;

    public LabelSettings Settings => settings.Get();
}
