using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.LostAndFound;
using TagPage.Records.Shop;
using TagPage.Web.Pages.Shop.Shared;

namespace TagPage.Web.Pages.Shop.LostAndFound;

/// <summary>What is lost now, and what finders have done.</summary>
public sealed class IndexModel(FoundLogStore store, ShopClock clock) : PageModel
{
    public IReadOnlyList<FoundLogStore.LostRow> Lost { get; private set; } = [];

    public IReadOnlyList<FoundLogRow> Log { get; private set; } = [];

    /// <summary>The last row's number where there are older ones.</summary>
    public long? Older { get; private set; }

    public void OnGet([FromQuery] long? before)
    {
        Lost = before is null ? store.LostNow() : [];
        var rows = store.Page(before ?? long.MaxValue);
        Log = [.. rows.Take(FoundLogStore.OnAPage).Select(r => new FoundLogRow(r, clock.OnTheWall(r.At), true))];
        Older = rows.Count > FoundLogStore.OnAPage ? rows[FoundLogStore.OnAPage - 1].Id : null;
    }
}
