using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Tags;
using TagPage.Records.Search;
using TagPage.Records.Storage;
using TagPage.Records.Tags;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Tags;

public sealed class LinkModel(TagStore store, RacketPickStore rackets) : PageModel
{
    [BindProperty(SupportsGet = true)]
    public string? Q { get; set; }

    [BindProperty(SupportsGet = true)]
    public long? Racket { get; set; }

    public TagStore.Row Saved { get; private set; } = new();

    public RacketPickStore.Row? Picked { get; private set; }

    public IReadOnlyList<RacketPickStore.Row> Rackets { get; private set; } = [];

    public string Why => Saved.State == TagState.Retired
        ? "This tag was retired for good. Use another one."
        : $"This tag is already on racket {Saved.Number} of {Saved.PlayerName}.";

    public IActionResult OnGet(string code) => Load(code) ? Page() : NotFound();

    public IActionResult OnPost(string code)
    {
        if (!Load(code) || Picked is null)
            return NotFound();
        switch (store.Link(Who.Shop, Saved.Code, Picked.Id))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused);
        }
        this.Say($"Tag {Saved.Code.Display} now opens racket {Picked.Number} of {Picked.PlayerName}.");
        return Redirect($"/shop/rackets/{Picked.Id}");
    }

    private bool Load(string code)
    {
        if (TagCode.Read(code).Code is not { } tag || store.Get(tag) is not { } row)
            return false;
        Saved = row;
        Picked = Racket is { } id ? rackets.Get(id) : null;
        Rackets = Q is null ? rackets.Recent() : SearchWords.Of(Q) is { } words ? rackets.Find(words) : [];
        return Racket is null || Picked is not null;
    }
}
