using System.Text;
using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Players;
using TagPage.Labels.Layout;
using TagPage.Labels.Render;
using TagPage.Labels.Render.Pdf;
using TagPage.Records.Labels;
using TagPage.Records.Shop;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Labels;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Labels;

public sealed class RacketModel(LabelStore store, LabelMaker maker, ShopClock clock, PublicAddress address) : RecordPage<LabelRow>
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

    public LaidLabel? Label { get; private set; }

    /// <summary>Why there is no label of this kind yet.</summary>
    public string? Why { get; private set; }

    public string? AddressWarning => TagSquare.Warning(address);

    public LabelSettings Settings => maker.Settings;

    protected override LabelRow? Find(long id) => store.Get(id, Job);

    public void OnGet()
    {
        Input = WithKept(new LabelInput { Purpose = Purpose ?? (Saved.Job is not null ? LabelPurpose.Done : Job is null ? LabelPurpose.Return : LabelPurpose.Waiting) });
        Lay();
    }

    /// <summary>The usual label at once as a file; where none can be made, the page that says why.</summary>
    public IActionResult OnGetNow()
    {
        OnGet();
        return Label is null ? Page() : Redirect(LabelLink.Of(Id, Job, Input.ToEntry(Settings.TapeColour)));
    }

    public IActionResult OnPost()
    {
        if (Saved.Junior && WhoseOnLabel.GivesAwayMore(Input.AgreedName ?? "", Saved.PlayerName))
            this.Note([new FieldFault(nameof(Input.AgreedName), "Enter a given name or a nickname only: a family name can lead to the child.")]);
        if (Settings.InkFault(Input.TapeColour, Input.InkColour) is { } fault)
            this.Note([new FieldFault(nameof(Input.InkColour), fault)]);
        if (Input.Pages == LabelPages.Sheet && Settings.Sheet().Places is var places && Input.FirstFree > places)
            this.Note([new FieldFault(nameof(Input.FirstFree), $"A sheet has {places} places. Enter a number from 1 to {places}.")]);
        if (Input is { Pages: LabelPages.Sheet, Fold: true })
            this.Note([new FieldFault(nameof(Input.Fold), "A label of a sheet is not folded over. Print on tape, or without the fold.")]);
        if (LabelLetters.Fault(Input.OwnLine) is { } letters)
            this.Note([new FieldFault(nameof(Input.OwnLine), letters)]);
        if (Input.MarksRacket && TapeColours.IsClear(Input.TapeOr(Settings.TapeColour)))
            this.Note([new FieldFault(nameof(Input.MarksRacket), "Clear tape has no colour to tell a racket by.")]);
        if (ModelState.IsValid)
            Lay();
        if (!ModelState.IsValid || Preview || Label is null)
            return Page();
        return this.After(store.Remember(User.AtShop(), Id, Input.ToEntry(Settings.TapeColour), clock.Today), _ => Redirect(LabelLink.Of(Id, Job, Input.ToEntry(Settings.TapeColour))));
    }

    /// <summary>The label as a file, made from what is on record: asked for again, it is the same label.</summary>
    public IActionResult OnGetPdf([FromQuery] LabelInput input) => FileOf(input, label =>
        File(LabelPdf.Of(maker.Pages([label], input.Pages, input.Copies ?? 1, input.FirstFree ?? 1)), "application/pdf"));

    public IActionResult OnGetPng([FromQuery] LabelInput input) => FileOf(input, label =>
        File(Png.Of(LabelDots.Of(label), label.Stock.Printer.Dpi), "image/png"));

    public IActionResult OnGetSvg([FromQuery] LabelInput input) => FileOf(input, label =>
        File(Encoding.UTF8.GetBytes(LabelSvg.Of(label, "Label")), "image/svg+xml"));

    private IActionResult FileOf(LabelInput input, Func<LaidLabel, IActionResult> file) =>
        ModelState.IsValid && maker.Make(Saved, WithKept(input).ToEntry(Settings.TapeColour)).Label is { } label ? file(label) : NotFound();

    private LabelInput WithKept(LabelInput input) => input with
    {
        TapeColour = Saved.LabelTape,
        InkColour = Saved.LabelInk,
        OwnLine = Saved.LabelLine,
        AgreedName = Saved.LabelName,
    };

    private void Lay() => (Label, Why) = maker.Make(Saved, Input.ToEntry(Settings.TapeColour));
}
