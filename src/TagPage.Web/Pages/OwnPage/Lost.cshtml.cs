using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Rackets;
using TagPage.Records.LostAndFound;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Marks a racket as lost.</summary>
public sealed class LostModel(ClientOnFileStore clients, OwnPageRacketStore rackets, LostStore store, OwnPageFoundStore found, ShopClock clock) : OwnPageModel(clients)
{
    public sealed record Fields
    {
        public string? Since { get; init; }
        public string? Note { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public OwnPageRacket Racket { get; private set; } = new();

    public string ChoiceNow => Names.Of(found.Get(Me.Id).Choice);

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        var since = Racket.LostSince ?? clock.Today;
        Input = new Fields { Since = since.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), Note = Racket.LostNote };
        return Page();
    }

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        if (!DateOnly.TryParseExact(Input.Since, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var since))
            ModelState.AddModelError("Input.Since", Say.Lost.SinceUnread);
        if (!ModelState.IsValid)
            return Page();
        switch (store.Lose(Who.Client(Me.Id), id, new LostEntry { Since = since, Note = Input.Note }))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused { Why: var why }:
                ModelState.AddModelError("Input." + why.Field, why is LostNoteUnfit { Fault: var fault } ? Advice(fault) : Say.Lost.SinceUnread);
                return Page();
        }
        this.Say(Say.Lost.Saved);
        return Redirect(Link($"/my/rackets/{id}"));
    }

    private string Advice(LostNoteFault fault) => fault switch
    {
        LostNoteFault.TooLong => Say.Lost.NoteTooLong,
        LostNoteFault.NotPlain => Say.Lost.NoteNotPlain,
        LostNoteFault.MailSign => Say.Lost.NoteMail,
        LostNoteFault.Link => Say.Lost.NoteLink,
        LostNoteFault.Digits => Say.Lost.NoteDigits,
        _ => Say.Lost.NoteName,
    };

    private bool Load(long id)
    {
        if (rackets.Get(Me.Id, id) is not { IsMine: true } racket)
            return false;
        Racket = racket;
        return true;
    }
}
