using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Jobs;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class CancelModel(JobStore jobs, MoveStore moves) : RecordPage<JobRow>
{
    protected override JobRow? Find(long id) => jobs.GetWithVisits(User.AtShop(), id);

    public IActionResult OnPost() => this.After(moves.Cancel(User.AtShop(), Id),
        _ => this.GoOn("/shop", $"Ticket {Saved.Ticket} is cancelled.", "Undo", $"/shop/jobs/back/{Id}"));
}
