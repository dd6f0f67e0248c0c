using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Jobs;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class ReceivedModel(JobStore jobs, MoveStore moves) : RecordPage<JobRow>
{
    protected override JobRow? Find(long id) => jobs.Get(User.AtShop(), id);

    public IActionResult OnPost() => this.After(moves.Receive(User.AtShop(), Id),
        _ => this.GoOn($"/shop/jobs/{Id}", $"Ticket {Saved.Ticket} is waiting at the bench.", "Back to the bench", "/shop"));
}
