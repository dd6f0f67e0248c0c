using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Mail;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class ReadyModel(JobStore jobs, ReadyStore store, JobMails notices) : PageModel
{
    public JobRow Job { get; private set; } = new();

    public JobMails.Notice Words { get; private set; } = new("", "", "");

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
        (Job, Words) = (job, notices.Ready(job));
        return true;
    }
}
