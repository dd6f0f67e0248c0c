using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Clients;

namespace TagPage.Web.Pages.Shop.Payers;

public sealed class IndexModel(PayerStore store) : PageModel
{
    public IReadOnlyList<PayerStore.Row> Payers { get; private set; } = [];

    public void OnGet() => Payers = store.List();
}
