using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Data;
using TagPage.Web.Forms;
using TagPage.Web.Pages.My;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class ReadyModel(JobStore jobs, ReadyStore store) : PageModel
{
    public JobRow Job { get; private set; } = new();

    public CornerNotices.Notice Words { get; private set; } = new("", "", "");

    public IActionResult OnGet(long id) => Load(id) ? Page() : NotFound();

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        switch (store.Tell(id))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused);
        }
        this.Say($"The mail that ticket {Job.Ticket} is ready is on its way out.");
        return Redirect($"/shop/jobs/{id}");
    }

    private bool Load(long id)
    {
        if (jobs.Get(id) is not { } job)
            return false;
        (Job, Words) = (job, store.Words(id));
        return true;
    }
}
