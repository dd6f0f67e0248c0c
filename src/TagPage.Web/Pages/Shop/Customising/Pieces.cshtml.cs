using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Customising;
using TagPage.Records.Customising;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Customising;

/// <summary>What is on a frame, what was, and a form to note what somebody else put on.</summary>
public sealed class PiecesModel(FrameOnFileStore frames, AddedMassStore store, ShopStore shops, ShopClock clock) : RecordPage<FrameOnFile>
{
    [BindProperty]
    public PieceInput Input { get; set; } = new();

    public SpecWords Words => new(shops.Get().CustomisingValues, Saved.Racket.Sport);

    /// <summary>All that was ever added, what is on first.</summary>
    public IReadOnlyList<AddedMassStore.Row> Pieces => store.Of(Id);

    protected override FrameOnFile? Find(long id) => frames.Get(id);

    public void OnGet() => Input = new PieceInput
    {
        FormKey = FormKey.New(),
        LengthUnit = Words.PlaceLengthUnit,
        WeightUnit = Words.Values.WeightUnit,
        Material = Tape.Usual(Saved.Junior),
        AddedOn = clock.Today,
    };

    public IActionResult OnPost()
    {
        var place = Saved.Places.FirstOrDefault(known => string.Equals(known.Name, Input.Place, StringComparison.OrdinalIgnoreCase));
        if (place is null && Input is { Place: not null, At: null })
            ModelState.AddModelError("Input.At", "Enter how far it is from the butt: the frame’s list has no such place.");
        if (Input.AddedOn > clock.Today)
            ModelState.AddModelError("Input.AddedOn", "This day is in the future.");
        if (!ModelState.IsValid)
            return Page();
        return this.After(store.Note(User.AtShop(), Id, Input.ToEntry(place)), _ => this.GoOn($"/shop/customise/pieces/{Id}", "The piece is noted."));
    }
}
