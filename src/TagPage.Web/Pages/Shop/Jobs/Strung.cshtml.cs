using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Jobs;
using TagPage.Records.Accounts;
using TagPage.Records.Condition;
using TagPage.Records.Jobs;
using TagPage.Records.Machines;
using TagPage.Records.Readings;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Pages.Shop.Shared;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class StrungModel(JobStore jobs, MoveStore moves, JobChoicesReader choices, LastUsedStore habits, NewJobStore rackets, UsualStore usual, ReadingStore readings, AccountStore accounts, MachineStore machines, ConditionStore conditions, ShopClock clock)
    : RecordPage<JobRow>
{
    [BindProperty]
    public StrungInput Input { get; set; } = new();

    /// <summary>Go on to the label.</summary>
    [BindProperty]
    public bool Print { get; set; }

    /// <summary>The strings that are in the racket.</summary>
    public BedStore.Open? Bed => rackets.CurrentBed(Saved.RacketId);

    /// <summary>Machines whose check is overdue.</summary>
    public IReadOnlyList<MachineRow> Overdue => machines.Overdue();

    /// <summary>What the racket looked like when it came in.</summary>
    public ConditionRow? Condition => conditions.OfJob(User.AtShop(), Id);

    public JobChoices Choices => choices.Of(Saved);

    protected override JobRow? Find(long id) => jobs.Get(User.AtShop(), id);

    public void OnGet()
    {
        var last = habits.LastStrung(Saved.RacketId);
        Input = new StrungInput
        {
            StrungOn = clock.Today,
            StrungBy = Saved.StrungBy.Length > 0 ? Saved.StrungBy : Mine ?? last.StrungBy,
            Machine = Saved.Machine.Length > 0 ? Saved.Machine : last.Machine,
            Reading = Saved.Reading,
            InstrumentId = Saved.InstrumentId ?? last.InstrumentId,
        };
    }

    /// <summary>Whoever is signed in, where there is more than one.</summary>
    private string? Mine => accounts.AreSeveral() ? User.Identity?.Name : null;

    public IActionResult OnPost()
    {
        this.Note([
            .. new JobDays { ReceivedOn = Saved.ReceivedOn, StrungOn = Input.StrungOn }.Faults(clock.Today),
            .. ReadingRules.Faults(Input.Reading, Input.InstrumentId)]);
        if (!ModelState.IsValid || this.Asks(FirstReading.Oddities(usual, Saved, Input.Reading, Input.InstrumentId, readings.Of(Id)), Input.Confirmed))
            return Page();
        return this.After(moves.MarkStrung(User.AtShop(), Id, Input.ToEntry()), _ =>
        {
            this.CanBeUndone(UndoLink.Of(JobState.Strung, Id));
            return this.GoOn(Print ? $"/shop/labels/racket/{Saved.RacketId}?job={Id}&handler=now" : $"/shop/jobs/{Id}", $"Ticket {Saved.Ticket} is strung.");
        });
    }
}
