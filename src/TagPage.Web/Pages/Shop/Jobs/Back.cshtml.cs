using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class BackModel(JobStore jobs, BackStore store) : PageModel
{
    public JobRow Job { get; private set; } = new();

    /// <summary>The state the page showed.</summary>
    [BindProperty]
    public JobState From { get; set; }

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        From = Job.State;
        return Page();
    }

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        if (!ModelState.IsValid)
            return Page();
        switch (store.Back(id, From))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused);
        }
        Load(id);
        this.Say($"Ticket {Job.Ticket} is {EnglishNames.Of(Job.State)} again.");
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
