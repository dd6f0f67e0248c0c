using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Reminders;

/// <summary>How far a batch of reminders has got.</summary>
public sealed class ProgressModel(BatchStore store, BatchWorker worker, ShopStore shops) : PageModel
{
    private const int LookAgainSeconds = 5;

    public BatchStore.Row Batch { get; private set; } = new();

    public bool IsQuiet => worker.IsQuiet;

    public ShopDetails Shop => shops.Get();

    public IActionResult OnGet(long id)
    {
        if (store.Get(id) is not { } batch)
            return NotFound();
        Batch = batch;
        if (batch.IsRunning && !IsQuiet)
            Response.Headers["Refresh"] = LookAgainSeconds.ToString(System.Globalization.CultureInfo.InvariantCulture);
        return Page();
    }
}
