using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Mail;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>Tells a household, or each client of a payer, of all that is ready in one email.</summary>
public sealed class ReadyAllModel(ReadyStore store, TogetherStore together, JobMails notices, ShopStore shops) : TogetherPage(together)
{
    /// <summary>Rackets that nobody was told of, by client.</summary>
    public IEnumerable<IGrouping<long, JobRow>> Untold => Saved.Ready.Where(job => job.ToldReadyAt is null).GroupBy(job => job.ClientId);

    public bool HasShopMail => shops.Get().Mail is not null;

    /// <summary>How many emails can be sent.</summary>
    public int Reached => HasShopMail ? Untold.Count(household => household.First().ClientMail is not null) : 0;

    public JobMails.Notice Words(IEnumerable<JobRow> jobs) => notices.Ready([.. jobs]);

    public void OnGet()
    {
    }

    public IActionResult OnPost() => this.After(store.TellAll(User.AtShop(), Party),
        told => this.GoOn(Home, told == 1 ? "The email that 1 racket is ready is on its way." : $"The email that {told} rackets are ready is on its way."));
}
