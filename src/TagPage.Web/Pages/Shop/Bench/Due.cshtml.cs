using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.DueDates;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Bench;

public sealed class DueModel(DueStore store, DueDateKeeper dates, ShopStore shops) : PageModel
{
    /// <summary>Show those too who have not been seen for long.</summary>
    [BindProperty(SupportsGet = true, Name = "unseen")]
    public bool WithUnseen { get; set; }

    /// <summary>The last household of the page before.</summary>
    [BindProperty(SupportsGet = true, Name = "after")]
    public string? After { get; set; }

    public ShopDetails Shop => shops.Get();

    public DueList Due { get; private set; } = DueList.Empty;

    public (long Left, long All) Progress { get; private set; }

    public DueKey? From => DueKey.Read(After);

    public void OnGet()
    {
        Due = store.List(WithUnseen, From);
        Progress = dates.Progress();
    }
}
