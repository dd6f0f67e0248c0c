using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Mail;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class ReadyModel(JobStore jobs, ReadyStore store, JobMails notices, ShopStore shops) : RecordPage<JobRow>
{
    public JobMails.Notice Words => notices.Ready([Saved]);

    public bool HasShopMail => shops.Get().Mail is not null;

    protected override JobRow? Find(long id) => jobs.GetWithVisits(User.AtShop(), id);

    public IActionResult OnPost() => this.After(store.Tell(User.AtShop(), Id),
        _ => this.GoOn($"/shop/jobs/{Id}", $"The email that ticket {Saved.Ticket} is ready is on its way."));
}
