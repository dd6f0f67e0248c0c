using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Rendering;
using TagPage.Records.DueDates;
using TagPage.Records.Readings;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Pages.Shop.Shared;

namespace TagPage.Web.Pages.Shop.Readings;

public sealed class NewModel(ReadingStore store, DoubtStore doubts, JobChoicesReader choices, ShopClock clock) : RecordPage<MeasuredBed>
{
    [BindProperty]
    public ReadingInput Input { get; set; } = new();

    public IReadOnlyList<SelectListItem> Instruments => choices.Of().Instruments;

    /// <param name="id">Of the job whose strings are measured.</param>
    protected override MeasuredBed? Find(long id) => store.Bed(User.AtShop(), id);

    public void OnGet() => Input = new ReadingInput { FormKey = FormKey.New(), TakenOn = clock.Today, InstrumentId = Saved.InstrumentId };

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid || this.Asks(Oddities, Input.Confirmed))
            return Page();
        return this.After(store.Add(User.AtShop(), Id, Input.ToEntry()),
            _ => this.GoOn($"/shop/rackets/{Saved.RacketId}#readings", "The reading is saved."));
    }

    private IReadOnlyList<Oddity> Oddities => doubts.Oddities(
        Saved, clock.Today, (Input.TakenOn, Input.TakenAt, Input.Value, Input.InstrumentId), (nameof(Input.TakenOn), nameof(Input.Value), nameof(Input.InstrumentId)));
}
