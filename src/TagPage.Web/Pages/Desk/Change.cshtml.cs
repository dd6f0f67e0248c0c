using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Rendering;
using TagPage.Core.EventDesk;
using TagPage.Core.Jobs;
using TagPage.Core.Sports;
using TagPage.Records.Events;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Desk;

/// <summary>A racket that waits is wanted otherwise: another match, another tension, other strings.</summary>
public sealed class ChangeModel(DeskStore desks, LiveDesks live, IntakeStore intakes, StringPickStore strings, ShopStore shops, EntryChangeStore changes, JobStore jobs)
    : IntakePage(desks, live, intakes, strings, shops)
{
    public sealed record ChangeInput : IntakeInput
    {
        public int Version { get; init; }
    }

    [BindProperty]
    public ChangeInput Input { get; set; } = new();

    [BindProperty]
    public string? Answer { get; set; }

    protected override IntakeInput Form => Input;

    protected override DateOnly FormDay => ItsDay;

    public EntryRow Racket { get; private set; } = new();

    public string Here => $"{Home}/entry/{Racket.Number}";

    public override string Press => "Save the change";

    public override IEnumerable<SelectListItem> Days => Saved.Event.Days.Append(ItsDay).Distinct().Order().Select(Day);

    protected override Sport Sport => Racket.Sport;

    protected override DeskEntry Planned => Saved.ToDesk(Racket) with { NeededBy = null, NotBefore = null, OnCourt = false, Promised = null };

    protected override IEnumerable<long> Named => [Racket.MainsId, Racket.CrossesId];

    protected override int? StoredVersion => Racket.Version;

    // Of the match, else of the time before which it is not to be strung.
    private DateOnly ItsDay => (Racket.NeededBy ?? Racket.NotBefore) is { } at ? DateOnly.FromDateTime(at) : Today;

    protected override DeskBoard? Find(long id)
    {
        var board = base.Find(id);
        if (board?.Of(int.Parse((string)RouteData.Values["number"]!, CultureInfo.InvariantCulture)) is not { } racket)
            return null;
        Racket = racket;
        return board;
    }

    public IActionResult OnGet()
    {
        if (Racket.State != JobState.Waiting)
            return Redirect(Here);
        Input = (ChangeInput)IntakeInput.Of(new ChangeInput { Version = Racket.Version }, Racket, ItsDay) with
        {
            Price = Racket.PriceMinor is { } price && price != Saved.Event.PriceMinor(Racket.MainsSuppliedBy, Racket.CrossesSuppliedBy) ? Currencies.ToAmount(price, Shop.Currency) : null,
        };
        return Page();
    }

    public IActionResult OnPost() =>
        Racket.State != JobState.Waiting ? this.Refuse(new Outcome.Refused(new EntryMovedOn(Racket.Number, Racket.State, Racket.StrungBy)))
        : Input.Version != Racket.Version && Intakes.Sent(Me, Id, Input.FormKey) is null ? this.Refuse(Outcome.Stale, Racket.Version)
        : Save(Input, Input.ToEntry(FormDay), Racket.Sport, jobs.Get(Who.Shop, Racket.JobId), Answer);

    protected override Refusal? Unkeepable(IntakeEntry entry) => Racket.HasTimesOf(entry) ? null : base.Unkeepable(entry);

    protected override WhatIf? Ask(IntakeEntry entry, Sport sport) => changes.Ask(Me, Id, Racket.Number, entry);

    protected override Outcome Keep(IntakeEntry entry) => changes.Change(Me, Id, Racket.Number, Input.Version, entry);

    protected override IActionResult Kept(EntryRow racket) =>
        this.GoOn(Here, $"Number {racket.Number} is changed: promised for {DeskWords.Time(racket.Promised, Saved.Now)}.");
}
