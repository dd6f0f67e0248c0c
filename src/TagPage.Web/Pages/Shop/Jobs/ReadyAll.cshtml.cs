using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Jobs;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Mail;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>Tells a household, or each client of a payer, of all that is ready in one email.</summary>
public sealed class ReadyAllModel(ReadyStore store, TogetherStore together, JobMails notices) : TogetherPage(together)
{
    /// <summary>Rackets that nobody was told of, by client.</summary>
    public IEnumerable<IGrouping<long, JobRow>> Untold => Saved.Ready.Where(job => job.ToldReadyAt is null).GroupBy(job => job.ClientId);

    public JobMails.Notice Words(IEnumerable<JobRow> jobs) => notices.Ready([.. jobs]);

    public void OnGet()
    {
    }

    public IActionResult OnPost() => this.After(store.TellAll(User.AtShop(), Party),
        told => this.GoOn(Home, told == 1 ? "The email that 1 racket is ready is on its way." : $"The email that {told} rackets are ready is on its way."));
}
