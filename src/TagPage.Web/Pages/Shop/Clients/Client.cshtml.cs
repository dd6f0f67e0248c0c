using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Forecast;
using TagPage.Records.Clients;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Clients;

public sealed class ClientModel(ClientPageStore store, ShopStore shops, ShopClock clock) : PageModel
{
    public ClientPageStore.Client Client { get; private set; } = new();

    public IActionResult OnGet(long id)
    {
        if (store.Get(id) is not { } client)
            return NotFound();
        Client = client;
        return Page();
    }

    public DateOnly DayOf(DateTimeOffset instant) => clock.DayOf(instant);

    public RestringBy Work(ClientPageStore.Racket racket) => racket.Work(clock.Today, shops.Get().StartingValues);
}
