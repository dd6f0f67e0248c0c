using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class ReceivedModel(JobStore jobs, MoveStore moves) : RecordPage<JobRow>
{
    protected override JobRow? Find(long id) => jobs.Get(Who.Shop, id);

    public IActionResult OnPost() => this.After(moves.Receive(Who.Shop, Id),
        _ => this.GoOn($"/shop/jobs/{Id}", $"Ticket {Saved.Ticket} is waiting at the bench.", "Back to the bench", "/shop"));
}
