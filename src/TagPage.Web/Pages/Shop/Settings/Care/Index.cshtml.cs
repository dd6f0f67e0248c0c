using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Settings.Care;

public sealed class IndexModel(CareGuideStore store) : PageModel
{
    public IReadOnlyList<CareGuideStore.Row> Guides { get; private set; } = [];

    public void OnGet() => Guides = store.List();
}
