using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Pages.Shop.Shared;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class EditModel(EditJobStore store, JobStore jobs, JobChoicesReader choices, ShopStore shops, ShopClock clock) : PageModel
{
    [BindProperty]
    public EditInput Input { get; set; } = new();

    public JobRow Job { get; private set; } = new();

    public JobChoices Choices => choices.Of(Job);

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        Input = JobFill.Edit(Job, shops.Get());
        return Page();
    }

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        this.Note([.. JobRules.Of(Input, Job.Sport, shops.Get()), .. ReadingRules.Of(Input.Reading, Input.InstrumentId), .. EditDates.Of(Input, clock.Today)]);
        if (!ModelState.IsValid || this.Asks(JobRules.Questions(Input, Job.Sport, Job), Input.Confirmed))
            return Page();
        switch (store.Change(id, Input.ToEntry()))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused, Job.Version);
        }
        this.Say($"Ticket {Job.Ticket} is saved.");
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
