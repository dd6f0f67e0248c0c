using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Records.Prepaid;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>Takes the last move back in one press, of all jobs that it moved.</summary>
public sealed class UndoModel(JobStore jobs, BackStore store, PrepaidStore prepaid) : PageModel
{
    [BindProperty(SupportsGet = true, Name = "job")]
    public List<long> Asked { get; set; } = [];

    /// <summary>The state that the move brought them to.</summary>
    [BindProperty(SupportsGet = true, Name = "from")]
    public JobState From { get; set; }

    public IReadOnlyList<JobRow> Saved { get; private set; } = [];

    /// <summary>Restrings paid in advance that would go back, or went.</summary>
    public int Prepaid { get; private set; }

    [NonHandler]
    public override void OnPageHandlerExecuting(PageHandlerExecutingContext context)
    {
        Saved = [.. Asked.Distinct().Take(TogetherStore.Most).Select(id => jobs.GetWithVisits(User.AtShop(), id)).OfType<JobRow>()];
        if (Saved.Count == 0 || Saved.Count < Asked.Distinct().Count())
            context.Result = NotFound();
        Prepaid = Saved.Count(job => job.State == JobState.Collected && prepaid.ForJob(User.AtShop(), job.Id) is { IsUsed: true });
    }

    public void OnGet()
    {
    }

    public IActionResult OnPost() => !ModelState.IsValid ? Page() : this.After(store.BackTogether(User.AtShop(), [.. Saved.Select(job => job.Id)], From), Done);

    private RedirectResult Done(long first)
    {
        var state = jobs.GetWithVisits(User.AtShop(), first) is { } job ? EnglishNames.Of(job.State, job.IsVisit) : "";
        var what = Saved.Count == 1 ? $"Ticket {Saved[0].Ticket} is" : $"Tickets {string.Join(", ", Saved.Select(job => job.Ticket))} are";
        this.Say($"{what} {state} again.{(Saved.Any(job => job.PaidOn is not null) ? " What was paid stays noted." : "")}{(Prepaid == 0 ? "" : Prepaid == 1 ? " The prepaid restring is given back." : $" {Prepaid} prepaid restrings are given back.")}");
        return Redirect("/shop");
    }
}
