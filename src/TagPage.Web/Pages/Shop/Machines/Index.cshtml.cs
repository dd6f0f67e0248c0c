using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Machines;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Machines;

public sealed class IndexModel(MachineStore store, ShopClock clock) : PageModel
{
    public IReadOnlyList<MachineRow> Machines { get; private set; } = [];

    public DateOnly Today => clock.Today;

    public void OnGet() => Machines = store.List();
}
