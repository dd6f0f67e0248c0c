using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Web.Data;
using TagPage.Web.Forms;
using TagPage.Web.Pages.My;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class NewModel(NewJobStore store, JobStore jobs, FeelStore feels, JobChoicesStore choices, ShopStore shops, ShopClock clock) : PageModel
{
    [BindProperty(SupportsGet = true, Name = "racket")]
    public long RacketId { get; set; }

    [BindProperty]
    public NewInput Input { get; set; } = new();

    public NewJobStore.RacketRow Racket { get; private set; } = new();

    /// <summary>The job the form was filled in from.</summary>
    public JobRow? Last { get; private set; }

    /// <summary>What the player said about the last strings.</summary>
    public FeelStore.Row? Felt { get; private set; }

    public BedStore.Open? Bed { get; private set; }

    public JobChoices Choices => choices.Of(Last);

    public ShopDetails Shop => shops.Get();

    public IActionResult OnGet()
    {
        if (!Load())
            return NotFound();
        Input = JobFill.New(Last, FormKey.New(), clock.Today, Shop);
        return Page();
    }

    public IActionResult OnPost()
    {
        if (!Load())
            return NotFound();
        this.Note([
            .. JobRules.Of(Input, Racket.Sport, Shop),
            .. JobDates.NotToCome(clock.Today, (nameof(Input.ReceivedOn), Input.ReceivedOn), (nameof(Input.OldEndedOn), Input.OldEndedOn)),
            .. JobDates.Promised(Input.ReceivedOn, Input.PromisedFor)]);
        if (!ModelState.IsValid || this.Asks(JobRules.Doubts(Input, Racket.Sport, Last), Input.Confirmed))
            return Page();
        switch (store.Add(RacketId, Input))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused);
            case Outcome.Done done:
                this.Say($"Ticket {jobs.Get(done.Id)!.Ticket} is waiting at the bench.", "To the bench", "/shop");
                return Redirect($"/shop/jobs/{done.Id}");
            default:
                throw new InvalidOperationException();
        }
    }

    private bool Load()
    {
        if (store.Racket(RacketId) is not { } racket)
            return false;
        Racket = racket;
        Last = racket.LastJobId is { } last ? jobs.Get(last) : null;
        Bed = store.CurrentBed(RacketId);
        Felt = feels.Last(RacketId);
        return true;
    }
}
