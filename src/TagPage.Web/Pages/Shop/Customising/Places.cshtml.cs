using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Customising;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Customising;

/// <summary>Where this frame can carry mass, and how much.</summary>
public sealed class PlacesModel(FrameOnFileStore frames, FramePlaceStore store, ShopStore shops) : RecordPage<FrameOnFile>
{
    private const int Lines = 12;

    [BindProperty]
    public IList<PlaceInput> Input { get; set; } = [];

    [BindProperty(Name = "Input.Confirmed")]
    public string? Confirmed { get; set; }

    protected override FrameOnFile? Find(long id) => frames.Get(id);

    public SpecWords Words => new(shops.Get().CustomisingValues, Saved.Racket.Sport);

    public void OnGet() => Input = Filled(Saved.Places.Select(place => PlaceInput.Of(place, Words)));

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Again();
        List<(int Line, FramePlaceEntry Place)> places = [.. Input.Index().Where(line => line.Item.Name is not null).Select(line => (line.Index, line.Item.ToEntry()))];
        return this.Asks(Saved.Oddities(places), Confirmed)
            ? Again()
            : Save([.. places.Select(on => on.Place).OrderBy(place => place.Place.AtCm)], "The places are saved.");
    }

    /// <summary>Back to the list that its sport starts with.</summary>
    public IActionResult OnPostReset() => !ModelState.IsValid ? Again() : Save([], "This frame has the usual places again.");

    private PageResult Again()
    {
        Input = Filled(Input);
        return Page();
    }

    private IActionResult Save(IReadOnlyList<FramePlaceEntry> places, string said) =>
        this.After(store.Save(User.AtShop(), Id, places), _ => this.GoOn($"/shop/customise/{Id}", said));

    private List<PlaceInput> Filled(IEnumerable<PlaceInput> lines)
    {
        List<PlaceInput> filled = [.. lines];
        while (filled.Count < Lines)
            filled.Add(PlaceInput.Empty(Words));
        return filled;
    }
}
