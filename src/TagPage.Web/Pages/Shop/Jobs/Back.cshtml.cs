using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class BackModel(JobStore jobs, BackStore store) : RecordPage<JobRow>
{
    /// <summary>The state the page showed.</summary>
    [BindProperty]
    public JobState From { get; set; }

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
