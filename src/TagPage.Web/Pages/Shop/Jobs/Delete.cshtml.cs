using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class DeleteModel(JobStore jobs, JobDeleteStore store) : RecordPage<JobRow>
{
    protected override JobRow? Find(long id) => jobs.Get(Who.Shop, id);

    public IActionResult OnPost() => this.After(store.Delete(Who.Shop, Id),
        racket => this.GoOn($"/shop/rackets/{racket}", $"Ticket {Saved.Ticket} is deleted."));
}
