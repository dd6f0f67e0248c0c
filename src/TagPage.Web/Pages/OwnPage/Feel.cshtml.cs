using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Jobs;
using TagPage.Records.OwnPages;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>How the strings felt: the bench sees it at the next stringing.</summary>
public sealed class FeelModel(ClientOnFileStore clients, FeelStore store) : OwnPageModel(clients)
{
    public sealed record Fields
    {
        public string? Bed { get; init; }
        public bool MoreSpin { get; init; }
        public bool MoreControl { get; init; }
        public bool MoreComfort { get; init; }
        [DataType(DataType.MultilineText)]
        public string? Note { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public FeelStore.Row Saved { get; private set; } = new();

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        Input = new Fields { Bed = Saved.Bed?.ToString(), MoreSpin = Saved.MoreSpin, MoreControl = Saved.MoreControl, MoreComfort = Saved.MoreComfort, Note = Saved.Note };
        return Page();
    }

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        if (!Enum.TryParse<FeelBed>(Input.Bed, out var bed) || !Enum.IsDefined(bed))
            ModelState.AddModelError("Input.Bed", Say.Racket.FeelMissing);
        Limit("Input.Note", Input.Note, FeelStore.LongestNote);
        if (!ModelState.IsValid)
            return Page();
        var said = new FeelStore.Row { Bed = bed, MoreSpin = Input.MoreSpin, MoreControl = Input.MoreControl, MoreComfort = Input.MoreComfort, Note = Input.Note ?? "" };
        if (store.Save(Myself, id, said) is Outcome.Absent)
            return NotFound();
        this.Say(Say.Racket.FeelSaved);
        return Redirect(Link($"/my/rackets/{Saved.RacketId}"));
    }

    private bool Load(long id)
    {
        if (store.Get(Myself, id) is not { } row)
            return false;
        Saved = row;
        return true;
    }
}
