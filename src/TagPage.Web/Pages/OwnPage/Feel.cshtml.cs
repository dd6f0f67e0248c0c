using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Jobs;
using TagPage.Records.OwnPages;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>How the strings felt: the bench sees it at the next stringing.</summary>
public sealed class FeelModel(ClientOnFileStore clients, FeelStore store) : OwnRecordPage<FeelStore.Row>(clients)
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

    protected override FeelStore.Row? Find(long id) => store.Get(Myself, id);

    public void OnGet() =>
        Input = new Fields { Bed = Saved.Bed?.ToString(), MoreSpin = Saved.MoreSpin, MoreControl = Saved.MoreControl, MoreComfort = Saved.MoreComfort, Note = Saved.Note };

    public IActionResult OnPost()
    {
        if (!Enum.TryParse<FeelBed>(Input.Bed, out var bed) || !Enum.IsDefined(bed))
            ModelState.AddModelError("Input.Bed", Say.Racket.FeelMissing);
        Limit("Input.Note", Input.Note, FeelStore.LongestNote);
        if (!ModelState.IsValid)
            return Page();
        var said = new FeelStore.Row { Bed = bed, MoreSpin = Input.MoreSpin, MoreControl = Input.MoreControl, MoreComfort = Input.MoreComfort, Note = Input.Note ?? "" };
        return After(store.Save(Myself, Id, said), _ => GoOn($"/my/rackets/{Saved.RacketId}", Say.Racket.FeelSaved));
    }
}
