using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Jobs;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class DeleteModel(JobStore jobs, JobDeleteStore store) : RecordPage<JobRow>
{
    protected override JobRow? Find(long id) => jobs.Get(User.AtShop(), id);

    public IActionResult OnPost() => this.After(store.Delete(User.AtShop(), Id),
        racket => this.GoOn($"/shop/rackets/{racket}", $"Ticket {Saved.Ticket} is deleted."));
}
