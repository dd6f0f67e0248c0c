using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Jobs;
using TagPage.Records.Readings;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class IndexModel(JobStore jobs, FeelStore feels, LaterReadingStore readings, ShopStore shops, ShopClock clock) : PageModel
{
    public JobRow Job { get; private set; } = new();

    /// <summary>What the player said about the strings before these.</summary>
    public FeelStore.Row? Felt { get; private set; }

    /// <summary>Readings after the first.</summary>
    public IReadOnlyList<ReadingRow> Later { get; private set; } = [];

    public ShopDetails Shop => shops.Get();

    public DateOnly Today => clock.Today;

    public DateOnly DayOf(DateTimeOffset instant) => clock.DayOf(instant);

    public bool IsLate => Job.IsOpen && Job.PromisedFor < Today;

    public IActionResult OnGet(long id)
    {
        if (jobs.Get(id) is not { } job)
            return NotFound();
        Job = job;
        Felt = feels.Last(job.RacketId, exceptJob: id);
        Later = [.. readings.Of(id).Where(reading => !reading.First)];
        return Page();
    }
}
