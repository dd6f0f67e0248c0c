using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Events;

namespace TagPage.Web.Pages.Shop.Events;

public sealed class IndexModel(EventStore store) : PageModel
{
    public IReadOnlyList<EventStore.Line> Events { get; private set; } = [];

    public void OnGet() => Events = store.List();
}
