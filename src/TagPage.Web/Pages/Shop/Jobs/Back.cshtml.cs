using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Records.Prepaid;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class BackModel(JobStore jobs, BackStore store, PrepaidStore prepaid, ShopStore shops) : RecordPage<JobRow>
{
    /// <summary>The state the page showed.</summary>
    [BindProperty]
    public JobState From { get; set; }

    /// <summary>A restring paid in advance that would go back; null without one.</summary>
    public PrepaidStore.OfTicket? Prepaid => prepaid.ForJob(User.AtShop(), Id) is { IsUsed: true } used ? used : null;

    public ShopDetails Shop => shops.Get();

    protected override JobRow? Find(long id) => jobs.GetWithVisits(User.AtShop(), id);

    public void OnGet() => From = Saved.State;

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        return this.After(store.Back(User.AtShop(), Id, From),
            _ => this.GoOn($"/shop/jobs/{Id}", $"Ticket {Saved.Ticket} is {EnglishNames.Of(Find(Id)!.State, Saved.IsVisit)} again."));
    }
}
