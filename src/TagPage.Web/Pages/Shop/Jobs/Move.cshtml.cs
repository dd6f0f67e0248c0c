using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Jobs;
using TagPage.Records.Search;
using TagPage.Records.Storage;
using TagPage.Records.Tags;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class MoveModel(JobStore jobs, NewJobStore rackets, RacketPickStore picks, JobRacketStore store) : RecordPage<JobRow>
{
    [BindProperty(SupportsGet = true)]
    public string? Q { get; set; }

    /// <summary>The racket that was chosen.</summary>
    [BindProperty(SupportsGet = true)]
    public long? To { get; set; }

    [BindProperty]
    public MoveInput Input { get; set; } = new();

    public NewJobStore.RacketRow From { get; private set; } = new();

    public NewJobStore.RacketRow? Target { get; private set; }

    public bool IsOtherPlayers => Target?.PlayerId != From.PlayerId;

    public IReadOnlyList<RacketPickStore.Row> Rackets =>
        [.. (Q is null ? picks.Beside(Saved.RacketId) : SearchWords.Of(Q) is { } words ? picks.Find(words) : []).Where(r => r.Id != Saved.RacketId)];

    protected override JobRow? Find(long id)
    {
        Target = To is { } to ? rackets.Racket(User.AtShop(), to) : null;
        if (jobs.Get(User.AtShop(), id) is not { } job || (To is not null && Target is null))
            return null;
        From = rackets.Racket(User.AtShop(), job.RacketId)!;
        return job;
    }

    public void OnGet() => Input = new MoveInput { Version = Saved.Version };

    public IActionResult OnPost()
    {
        if (Target is null)
            return NotFound();
        if (!ModelState.IsValid || this.Asks(Oddities(Target), Input.Confirmed))
            return Page();
        return this.After(store.Move(User.AtShop(), Id, Input.ToEntry(Target.Id)),
            _ => this.GoOn($"/shop/jobs/{Id}", $"Ticket {Saved.Ticket} now belongs to {Target.Player}, racket {Target.Number}."), Saved.Version);
    }

    private IEnumerable<Oddity> Oddities(NewJobStore.RacketRow to)
    {
        if (to.PlayerId != From.PlayerId)
            yield return new OtherPlayers(nameof(MovedJobEntry.RacketId), to.Player);
        if (Saved.IsOpen && to.OpenTicket is { } ticket)
            yield return new OnBenchAlready(nameof(MovedJobEntry.RacketId), ticket);
        if (to.Sport == From.Sport)
            yield break;
        foreach (var unusual in new JobOrder { MainsTension = Saved.Mains, CrossesTension = Saved.Crosses }.Oddities(to.Sport, asked: null))
            yield return unusual with { Field = nameof(MovedJobEntry.RacketId) };
    }
}
