using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Players;
using TagPage.Labels.Layout;
using TagPage.Records.Labels;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;
using TagPage.Web.Labels;

namespace TagPage.Web.Pages.Shop.Labels;

public sealed class RacketModel(LabelStore store, LabelMaker maker, ShopClock clock, PublicAddress address) : PageModel
{
    [BindProperty]
    public LabelInput Input { get; set; } = new();

    /// <summary>Only preview the label; nothing is saved.</summary>
    [BindProperty]
    public bool Preview { get; set; }

    [BindProperty(SupportsGet = true)]
    public long? Job { get; set; }

    [BindProperty(SupportsGet = true)]
    public LabelPurpose? Purpose { get; set; }

    public LabelRow Racket { get; private set; } = new();

    public LaidLabel? Label { get; private set; }

    /// <summary>Why there is no label of this kind yet.</summary>
    public string? Why { get; private set; }

    public string? AddressWarning => TagSquare.Warning(address);

    public LabelSettings Settings => maker.Settings;

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        Input = new LabelInput
        {
            Purpose = Purpose ?? (Racket.Job is null ? LabelPurpose.Return : LabelPurpose.Done),
            TapeColour = Racket.TapeColour,
            InkColour = Racket.LabelInk,
            OwnLine = Racket.LabelLine,
            AgreedName = Racket.LabelName,
        };
        Lay();
        return Page();
    }

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        if (Racket.Junior && WhoseOnLabel.GivesAwayMore(Input.AgreedName ?? "", Racket.PlayerName))
            this.Note([new FieldFault(nameof(Input.AgreedName), "Enter a given name or a nickname only: a family name leads to a child.")]);
        if (ModelState.IsValid)
            Lay();
        if (!ModelState.IsValid || Preview || Label is null)
            return Page();
        if (store.Remember(id, Input.ToEntry(), clock.Today) is Outcome.Absent)
            return NotFound();
        return Redirect(LabelLink.Of(id, Job, Input.ToEntry()));
    }

    private bool Load(long id)
    {
        if (store.Get(id, Job) is not { } row)
            return false;
        Racket = row;
        return true;
    }

    private void Lay() => (Label, Why) = maker.Make(Racket, Input.ToEntry());
}
