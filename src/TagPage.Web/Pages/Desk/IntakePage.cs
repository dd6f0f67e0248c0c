using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Rendering;
using TagPage.Core.EventDesk;
using TagPage.Core.Sports;
using TagPage.Records.Events;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Desk;

/// <summary>What taking in a known racket and a visitor's have in common: nothing is promised that cannot be kept without saying so first.</summary>
public abstract class IntakePage(DeskStore desks, LiveDesks live, IntakeStore intakes, StringPickStore strings, ShopStore shops) : DeskPage(desks, live)
{
    /// <summary>Set where the wish cannot be kept: what can, and who would slip.</summary>
    public IntakeStore.WhatIf? Offer { get; private set; }

    protected IntakeStore Intakes { get; } = intakes;

    public ShopDetails Shop => shops.Get();

    /// <summary>What a racket without a match would be promised for now; null where the hours do not suffice.</summary>
    public DateTime? Earliest => Saved.Desk.EarliestPromise(new DeskEntry(Saved.Event.LastNumber + 1, Sport));

    /// <summary>Of the racket, as far as it is known.</summary>
    protected virtual Sport Sport => Sport.Tennis;

    public IEnumerable<SelectListItem> Mains => [new("Choose", ""), .. Strings];

    public IEnumerable<SelectListItem> Crosses => [new("Same as the mains", ""), .. Strings];

    public IEnumerable<SelectListItem> Days => Saved.Event.Days.Select(day => new SelectListItem(Formats.Day(day), DayField.Of(day)));

    public IEnumerable<SelectListItem> Technicians =>
        [new("anybody", ""), .. Saved.Technicians.Select(technician => new SelectListItem(technician.Name, $"{technician.Id}"))];

    private IEnumerable<SelectListItem> Strings => strings.Choices().Select(s => new SelectListItem(Formats.StringName(s.Name, s.GaugeMm), $"{s.Id}"));

    /// <summary>Today, or the nearest day of the event.</summary>
    protected DateOnly Today
    {
        get
        {
            var today = DateOnly.FromDateTime(Saved.Now);
            return today < Saved.Event.FromOn ? Saved.Event.FromOn : today > Saved.Event.ToOn ? Saved.Event.ToOn : today;
        }
    }

    /// <param name="input">As posted.</param>
    /// <param name="entry">What it asks for.</param>
    /// <param name="sport">The racket's.</param>
    /// <param name="last">Tensions like these are not asked about.</param>
    /// <param name="answer">What the desk chose to promise, once it was asked: later, or anyway.</param>
    protected IActionResult Save(IntakeInput input, IntakeEntry entry, Sport sport, JobRow? last, string? answer)
    {
        this.Note([.. input.Faults()]);
        this.Note(input.ToOrder().Faults(sport, Shop));
        if (entry.Unkeepable(Saved.Now) is { } why)
            this.Note([why with { Field = nameof(input.NeededAt) }]);
        if (!ModelState.IsValid || this.Asks(input.ToOrder().Oddities(sport, last), input.Confirmed))
            return Page();
        if (answer is null && entry.NeededBy is { } wish && Intakes.Ask(Me, Id, entry, sport) is { } whatIf && whatIf.Promise != wish)
        {
            Offer = whatIf;
            ModelState.AddModelError("Input.NeededAt", Sentence(whatIf, wish));
            return Page();
        }
        return this.After(Intakes.Add(Me, Id, entry with { Insist = answer == "anyway" }), number =>
            Desks.Get(Me, Id)?.Of((int)number) is { } racket ? TakenIn(racket) : NotFound());
    }

    private string Sentence(IntakeStore.WhatIf whatIf, DateTime wish)
    {
        if (whatIf.Promise is not { } earliest)
            return "Cannot be strung in the hours that are left.";
        var why = whatIf.Slips.Count > 0
            ? $"Cannot be promised for {DeskWords.Time(wish, Saved.Now)} without breaking another promise."
            : $"Cannot be ready by {DeskWords.Time(wish, Saved.Now)}.";
        return $"{why} Choose below: ready by {DeskWords.Time(earliest, Saved.Now)}, or insist.";
    }

    private IActionResult TakenIn(EntryRow racket) => this.GoOn($"{Home}/in",
        $"Number {racket.Number}: promised for {DeskWords.Time(racket.Promised, Saved.Now)}. Write the number on the racket or its bag.",
        "Another racket of the same player", $"{Home}/in/player/{racket.PlayerId}");
}
