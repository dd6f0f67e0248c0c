using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Pages.Shop.Shared;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class StrungModel(JobStore jobs, MoveStore moves, JobChoicesReader choices, LastUsedStore habits, NewJobStore rackets, ShopClock clock) : PageModel
{
    [BindProperty]
    public StrungInput Input { get; set; } = new();

    public JobRow Job { get; private set; } = new();

    public BedStore.Open? Bed { get; private set; }

    public JobChoices Choices => choices.Of(Job);

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        var last = habits.LastStrung();
        Input = new StrungInput
        {
            StrungOn = clock.Today,
            StrungBy = Job.StrungBy.Length > 0 ? Job.StrungBy : last.StrungBy,
            Machine = Job.Machine.Length > 0 ? Job.Machine : last.Machine,
            Reading = Job.Reading,
            InstrumentId = Job.InstrumentId ?? last.InstrumentId,
        };
        return Page();
    }

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        this.Note([
            .. JobDates.NotToCome(clock.Today, (nameof(Input.StrungOn), Input.StrungOn)),
            .. JobDates.Strung(Job.ReceivedOn, Input.StrungOn),
            .. ReadingRules.Of(Input.Reading, Input.InstrumentId)]);
        if (!ModelState.IsValid)
            return Page();
        switch (moves.MarkStrung(id, Input.ToEntry()))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused);
        }
        this.Say($"Ticket {Job.Ticket} is strung.", "Undo", $"/shop/jobs/back/{id}");
        return Redirect($"/shop/jobs/{id}");
    }

    private bool Load(long id)
    {
        if (jobs.Get(id) is not { } job)
            return false;
        Job = job;
        Bed = rackets.CurrentBed(job.RacketId);
        return true;
    }
}
