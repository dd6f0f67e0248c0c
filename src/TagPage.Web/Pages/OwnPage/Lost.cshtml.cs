using Microsoft.AspNetCore.Mvc;
using TagPage.Records.LostAndFound;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Marks a racket as lost.</summary>
public sealed class LostModel(ClientOnFileStore clients, OwnPageRacketStore rackets, LostStore store, FoundChoiceStore choices, ShopClock clock)
    : OwnRecordPage<OwnPageRacket>(clients)
{
    public sealed record Fields
    {
        public string? Since { get; init; }
        public string? Note { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public string ChoiceNow => Names.Of(choices.Get(Myself, Me.Id)!.Choice);

    protected override OwnPageRacket? Find(long id) => rackets.Get(Me.Id, id) is { IsMine: true } racket ? racket : null;

    public void OnGet()
    {
        var since = Saved.LostSince ?? clock.Today;
        Input = new Fields { Since = DayField.Of(since), Note = Saved.LostNote };
    }

    public IActionResult OnPost()
    {
        var read = DayField.Read(Input.Since);
        if (read is null)
            ModelState.AddModelError("Input.Since", Say.Lost.SinceUnread);
        return ModelState.IsValid && read is { } since
            ? After(store.Lose(Myself, Id, new LostEntry { Since = since, Note = Input.Note }), _ => GoOn($"/my/rackets/{Id}", Say.Lost.Saved))
            : Page();
    }
}
