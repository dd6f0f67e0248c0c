using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Pages.Shop.Shared;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class StartModel(JobStore jobs, MoveStore moves) : RecordPage<JobRow>
{
    protected override JobRow? Find(long id) => jobs.Get(User.AtShop(), id);

    public IActionResult OnPost() => this.After(moves.Start(User.AtShop(), Id), _ =>
    {
        this.CanBeUndone(UndoLink.Of(JobState.OnMachine, Id));
        return this.GoOn($"/shop/jobs/{Id}", $"Ticket {Saved.Ticket} is on the machine.");
    });
}
