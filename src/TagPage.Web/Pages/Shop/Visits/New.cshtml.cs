using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Stops;
using TagPage.Records.Storage;
using TagPage.Records.Visits;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Visits;

/// <summary>Work on a racket whose strings stay in it.</summary>
public sealed class NewModel(VisitStore store, NewJobStore rackets, PriceListStore prices, StopStore stops, ShopStore shops, ShopClock clock) : RecordPage<NewJobStore.RacketRow>
{
    [BindProperty(SupportsGet = true, Name = "racket")]
    public long RacketId { get; set; }

    [BindProperty]
    public VisitInput Input { get; set; } = new();

    public ShopDetails Shop => shops.Get();

    public PriceList Prices => prices.Get();

    public IReadOnlyList<StopRow> Stops => stops.InUse();

    protected override long Asked => RacketId;

    protected override NewJobStore.RacketRow? Find(long id) => rackets.Racket(User.AtShop(), id);

    public void OnGet() => Input = new VisitInput { FormKey = FormKey.New(), DoneOn = clock.Today };

    public IActionResult OnPost()
    {
        if (Input is { Waits: false, DoneOn: null })
            ModelState.AddModelError("Input.DoneOn", "Enter the day it was done.");
        if (!ModelState.IsValid || this.Asks([.. SameDay, .. Input.ToDays().Oddities(Shop.Opening)], Input.Confirmed))
            return Page();
        return this.After(store.Add(User.AtShop(), RacketId, Input.ToEntry()),
            id => this.GoOn($"/shop/visits/{id}", $"Ticket {store.Get(User.AtShop(), id)!.Ticket} is {(Input.Waits ? "waiting at the bench" : "noted as done")}."));
    }

    /// <summary>The same form sent twice is one visit and is not asked about.</summary>
    private IEnumerable<Oddity> SameDay => rackets.IsSent(Input.FormKey) ? []
        : store.OfRacket(User.AtShop(), RacketId).Where(visit => Input.Waits ? visit.State == JobState.Waiting : visit.DoneOn == Input.DoneOn).Take(1).Select(visit => new VisitSameDay(visit.Ticket, visit.DoneOn));
}
