using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Readings;

namespace TagPage.Web.Pages.Shop.Settings.Instruments;

public sealed class IndexModel(InstrumentStore store) : PageModel
{
    public IReadOnlyList<InstrumentStore.Row> Instruments { get; private set; } = [];

    public void OnGet() => Instruments = store.List();
}
