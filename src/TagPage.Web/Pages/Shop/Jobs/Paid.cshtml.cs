using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Pages.Shop.Shared;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class PaidModel(JobStore jobs, MoveStore moves, ShopClock clock) : PageModel
{
    [BindProperty]
    public PaidInput Input { get; set; } = new();

    public JobRow Job { get; private set; } = new();

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        Input = new PaidInput { PaidOn = Job.PaidOn is null ? clock.Today : null };
        return Page();
    }

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        this.Note(JobDates.NotToCome(clock.Today, (nameof(Input.PaidOn), Input.PaidOn)));
        if (!ModelState.IsValid)
            return Page();
        switch (moves.Pay(id, Input.PaidOn))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused);
        }
        this.Say($"Ticket {Job.Ticket} is marked as {(Input.PaidOn is null ? "not paid" : "paid")}.");
        return Redirect($"/shop/jobs/{id}");
    }

    private bool Load(long id)
    {
        if (jobs.Get(id) is not { } job)
            return false;
        Job = job;
        return true;
    }
}
