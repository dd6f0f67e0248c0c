using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.OwnPages;

/// <summary>The private links to one client's own page.</summary>
public sealed class IndexModel(ClientOnFileStore clients, OwnPageLinkStore links, OwnPageSessionStore sessions, ShopClock clock) : PageModel
{
    public ClientOnFileStore.Row Client { get; private set; } = new();

    public IReadOnlyList<OwnPageLinkStore.Row> Links { get; private set; } = [];

    public int Browsers { get; private set; }

    public bool IsLive(OwnPageLinkStore.Row link) => links.IsLive(link);

    public DateOnly DayOf(DateTimeOffset instant) => clock.DayOf(instant);

    public IActionResult OnGet(long id)
    {
        if (clients.Get(id) is not { } client)
            return NotFound();
        (Client, Links, Browsers) = (client, links.OfClient(id), sessions.Count(id));
        return Page();
    }

    public IActionResult OnPost(long id) => links.Make(id) is { } link ? Redirect($"/shop/corner/link/{link}") : NotFound();
}
