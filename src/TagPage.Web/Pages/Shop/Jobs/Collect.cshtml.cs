using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Pages.Shop.Shared;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class CollectModel(JobStore jobs, MoveStore moves, ShopClock clock) : PageModel
{
    [BindProperty]
    public CollectInput Input { get; set; } = new();

    public JobRow Job { get; private set; } = new();

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        Input = new CollectInput { CollectedOn = clock.Today };
        return Page();
    }

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        this.Note([
            .. JobDates.NotToCome(clock.Today, (nameof(Input.CollectedOn), Input.CollectedOn)),
            .. JobDates.Collected(Job.StrungOn ?? Input.CollectedOn, Input.CollectedOn)]);
        if (!ModelState.IsValid)
            return Page();
        switch (moves.Collect(id, Input.ToEntry()))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused);
        }
        this.Say($"Ticket {Job.Ticket} is handed out{(Input.Paid ? " and paid" : "")}.", "Undo", $"/shop/jobs/back/{id}");
        return Redirect("/shop");
    }

    private bool Load(long id)
    {
        if (jobs.Get(id) is not { } job)
            return false;
        Job = job;
        return true;
    }
}
