using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Data;
using TagPage.Web.Pages.My;

namespace TagPage.Web.Pages.Shop.Corner;

/// <summary>The private links to one client's own page.</summary>
public sealed class IndexModel(ClientOnFileStore clients, CornerLinkStore links, CornerSessionStore sessions, ShopClock clock) : PageModel
{
    public ClientOnFileStore.Row Client { get; private set; } = new();

    public IReadOnlyList<CornerLinkStore.Row> Links { get; private set; } = [];

    public int Browsers { get; private set; }

    public bool IsLive(CornerLinkStore.Row link) => links.IsLive(link);

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
