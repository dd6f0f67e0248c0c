using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Data;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class IndexModel(JobStore jobs, ShopStore shops, ShopClock clock) : PageModel
{
    public JobRow Job { get; private set; } = new();

    public ShopDetails Shop => shops.Get();

    public DateOnly Today => clock.Today;

    public bool IsLate => Job.IsOpen && Job.PromisedFor < Today;

    public IActionResult OnGet(long id)
    {
        if (jobs.Get(id) is not { } job)
            return NotFound();
        Job = job;
        return Page();
    }
}
