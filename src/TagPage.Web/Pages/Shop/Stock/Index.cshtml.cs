using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Stock;
using TagPage.Records.Strings;

namespace TagPage.Web.Pages.Shop.Stock;

public sealed class IndexModel(StockStore store, StringStore strings) : PageModel
{
    public IReadOnlyList<StockRow> Rows { get; private set; } = [];

    /// <summary>Offered strings of which no account is kept.</summary>
    public IReadOnlyList<StringStore.Row> Others { get; private set; } = [];

    public void OnGet()
    {
        Rows = store.List();
        var kept = Rows.Select(row => row.StringId).ToHashSet();
        Others = [.. strings.List().Where(row => row.Offered && !kept.Contains(row.Id))];
    }
}
