using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Stops;
using TagPage.Records.Storage;
using TagPage.Records.Visits;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Visits;

public sealed class EditModel(VisitStore store, StopStore stops, ShopStore shops) : RecordPage<VisitRow>
{
    [BindProperty]
    public VisitInput Input { get; set; } = new();

    /// <summary>Those of the visit stay on offer even when they are no longer used.</summary>
    public IReadOnlyList<StopRow> Stops => [.. stops.List().Where(stop => !stop.IsEnded || stop.Id == Saved.LeftAtId || stop.Id == Saved.CollectAtId)];

    protected override VisitRow? Find(long id) => store.Get(User.AtShop(), id);

    public void OnGet() => Input = new VisitInput { Version = Saved.Version, DoneOn = Saved.DoneOn, PromisedFor = Saved.PromisedFor, LeftAtId = Saved.LeftAtId, CollectAtId = Saved.CollectAtId == Saved.LeftAtId ? null : Saved.CollectAtId ?? 0, Works = [.. Saved.Works], Note = Saved.Note };

    public IActionResult OnPost() => ModelState.IsValid && !this.Asks(PromiseOddities, Input.Confirmed)
        ? this.After(store.Change(User.AtShop(), Id, Input.ToEntry()), _ => this.GoOn($"/shop/visits/{Id}", $"Ticket {Saved.Ticket} is saved."), Saved.Version)
        : Page();

    private IEnumerable<Oddity> PromiseOddities => Saved.DoneOn is null ? new JobDays { PromisedFor = Input.PromisedFor }.Oddities(shops.Get().Opening, Saved.PromisedFor) : [];
}
