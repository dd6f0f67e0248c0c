using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Audit;
using TagPage.Records.Shop;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Audit;

/// <summary>What an owner may be asked about, the newest first.</summary>
public sealed class IndexModel(AuditStore store, ShopClock clock) : PageModel
{
    public IReadOnlyList<AuditRow> Lines { get; private set; } = [];

    /// <summary>The last line's number where there are older ones.</summary>
    public long? Older { get; private set; }

    public void OnGet([FromQuery] long? before)
    {
        var rows = store.Page(User.AtShop(), before ?? long.MaxValue);
        Lines = [.. rows.Take(AuditStore.OnAPage)];
        Older = rows.Count > AuditStore.OnAPage ? rows[AuditStore.OnAPage - 1].Id : null;
    }

    public string When(AuditRow line)
    {
        var (first, last) = (clock.OnTheWall(line.FirstAt), clock.OnTheWall(line.LastAt));
        var from = $"{Formats.Day(DateOnly.FromDateTime(first.DateTime))}, {Clock(first)}";
        return Clock(first) == Clock(last) ? from : $"{from} to {Clock(last)}";
    }

    private static string Clock(DateTimeOffset time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);
}
