using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class CancelModel(JobStore jobs, MoveStore moves) : RecordPage<JobRow>
{
    protected override JobRow? Find(long id) => jobs.Get(Who.Shop, id);

    public IActionResult OnPost() => this.After(moves.Cancel(Who.Shop, Id),
        _ => this.GoOn("/shop", $"Ticket {Saved.Ticket} is cancelled.", "Undo", $"/shop/jobs/back/{Id}"));
}
