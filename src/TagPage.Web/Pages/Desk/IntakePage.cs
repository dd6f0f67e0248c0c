using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Rendering;
using TagPage.Core.EventDesk;
using TagPage.Core.Sports;
using TagPage.Records.Events;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Desk;

/// <summary>What forms about a racket at the desk have in common: nothing is promised that hurts others without saying so first.</summary>
public abstract class IntakePage(DeskStore desks, LiveDesks live, IntakeStore intakes, StringPickStore strings, ShopStore shops) : DeskPage(desks, live)
{
    /// <summary>Set where there is something to choose: what can be promised, and who would slip.</summary>
    public WhatIf? Offer { get; private set; }

    /// <summary>The time it is needed by, while that is asked about.</summary>
    public DateTime? Wish { get; private set; }

    protected IntakeStore Intakes { get; } = intakes;

    public ShopDetails Shop => shops.Get();

    /// <summary>What the form's button says.</summary>
    public virtual string Press => "Take it in";

    /// <summary>What is typed by now, where the page is read again while somebody types.</summary>
    [BindProperty(SupportsGet = true, Name = "typed")]
    public TypedInput Typed { get; set; } = new();

    /// <summary>What can be promised for what the form says.</summary>
    public IntakePreview Preview => IsTyped
        ? new(Saved.Desk, Planned with { Sport = Typed.Sport ?? Sport }, Typed.On(Form).ToEntry(FormDay))
        : new(Saved.Desk, Planned, Form.ToEntry(FormDay));

    private bool IsTyped => Request.Query.Keys.Any(key => key.StartsWith("typed.", StringComparison.Ordinal));

    /// <summary>What the page's form holds.</summary>
    protected abstract IntakeInput Form { get; }

    /// <summary>Of times where no day is chosen.</summary>
    protected virtual DateOnly FormDay => Today;

    /// <summary>The racket without any times.</summary>
    protected virtual DeskEntry Planned => new(Saved.Event.LastNumber + 1, Sport);

    /// <summary>Of the racket, as far as it is known.</summary>
    protected virtual Sport Sport => Sport.Tennis;

    public IEnumerable<SelectListItem> Mains => [new("Choose", ""), .. Strings];

    public IEnumerable<SelectListItem> Crosses => [new("Same as the mains", ""), .. Strings];

    public virtual IEnumerable<SelectListItem> Days => Saved.Event.Days.Select(Day);

    protected static SelectListItem Day(DateOnly day) => new(Formats.Day(day), DayField.Of(day));

    public IEnumerable<SelectListItem> Technicians =>
        [new("anybody", ""), .. Saved.Technicians.Select(technician => new SelectListItem(technician.Name, $"{technician.Id}"))];

    /// <summary>Countries and clubs that are at the event, as most of their rackets have them.</summary>
    public IEnumerable<string> Teams => Saved.Entries.Select(entry => entry.Team).Where(team => team.Length > 0).GroupBy(TeamName.KeyOf).Select(team => TeamName.Usual(team)!).Order();

    private IEnumerable<SelectListItem> Strings => strings.Choices(Named).Select(s => new SelectListItem(Formats.StringName(s.Name, s.GaugeMm), $"{s.Id}"));

    /// <summary>Strings that are offered because the racket is to get them.</summary>
    protected virtual IEnumerable<long> Named => [];

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
        if (Intakes.Sent(Me, Id, input.FormKey) is { } sent && Saved.Of(sent) is { } before)
            return Kept(before);
        this.Note([.. input.Faults()]);
        this.Note(input.ToOrder().Faults(sport, Shop));
        if (Unkeepable(entry) is { } why)
            this.Note([why with { Field = nameof(input.NeededAt) }]);
        if (!ModelState.IsValid || this.Asks(input.ToOrder().Oddities(sport, last), input.Confirmed))
            return Page();
        if (answer is null && Ask(entry, sport) is { } whatIf && whatIf.Asks(entry.NeededBy))
        {
            (Offer, Wish) = (whatIf, entry.NeededBy);
            var field = entry.NeededBy is null || whatIf.Promise == entry.NeededBy ? nameof(input.OnCourt) : nameof(input.NeededAt);
            ModelState.AddModelError("Input." + field, Sentence(whatIf, entry.NeededBy));
            return Page();
        }
        return this.After(Keep(entry with { Insist = answer == "anyway" }), number =>
            Desks.Get(Me, Id)?.Of((int)number) is { } racket ? Kept(racket) : NotFound(), StoredVersion);
    }

    /// <summary>Why nobody could keep its times.</summary>
    protected virtual Refusal? Unkeepable(IntakeEntry entry) => entry.Unkeepable(Saved.Now);

    protected virtual WhatIf? Ask(IntakeEntry entry, Sport sport) => Intakes.Ask(Me, Id, entry, sport);

    protected virtual Outcome Keep(IntakeEntry entry) => Intakes.Add(Me, Id, entry);

    /// <summary>Of a racket that is changed.</summary>
    protected virtual int? StoredVersion => null;

    private string Sentence(WhatIf whatIf, DateTime? wish)
    {
        if (whatIf.Promise is not { } earliest)
            return "Cannot be strung in the hours that are left.";
        var ready = $"ready by {DeskWords.Time(earliest, Saved.Now)}";
        if (wish is null || wish == earliest)
            return $"It would be {ready} and make {(whatIf.Hurt.Count == 1 ? "another" : $"{whatIf.Hurt.Count} others")} late. Choose below.";
        var why = whatIf.Slips.Count > 0
            ? $"Cannot be promised for {DeskWords.Time(wish, Saved.Now)} without breaking another promise."
            : $"Cannot be ready by {DeskWords.Time(wish, Saved.Now)}.";
        return $"{why} Choose below: {ready}, or insist.";
    }

    protected virtual IActionResult Kept(EntryRow racket) => this.GoOn($"{Home}/in",
        $"Number {racket.Number}: promised for {DeskWords.Time(racket.Promised, Saved.Now)}. Write the number on the racket or its bag.",
        "Another racket of the same player", $"{Home}/in/player/{racket.PlayerId}");
}
