using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Clients;

namespace TagPage.Web.Pages.Shop.Clients;

public sealed class IndexModel(ClientListStore store) : PageModel
{
    [BindProperty(SupportsGet = true)]
    public string? From { get; set; }

    [BindProperty(SupportsGet = true)]
    public long? After { get; set; }

    public IReadOnlyList<ClientListStore.Row> Clients { get; private set; } = [];

    /// <summary>The client after whom the next page begins, or null on the last.</summary>
    public long? Next { get; private set; }

    public bool IsAll => From is null && After is null;

    public void OnGet()
    {
        var rows = store.Page(From ?? "", After);
        Clients = [.. rows.Take(ClientListStore.PageSize)];
        Next = rows.Count > ClientListStore.PageSize ? Clients[^1].Id : null;
    }
}
