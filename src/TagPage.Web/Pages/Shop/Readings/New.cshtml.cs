using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.Mvc.Rendering;
using TagPage.Records.Readings;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Pages.Shop.Shared;

namespace TagPage.Web.Pages.Shop.Readings;

public sealed class NewModel(LaterReadingStore store, JobChoicesReader choices, ShopClock clock) : PageModel
{
    [BindProperty]
    public ReadingInput Input { get; set; } = new();

    public MeasuredBed Bed { get; private set; } = new();

    public IReadOnlyList<SelectListItem> Instruments => choices.Of(null).Instruments;

    public IActionResult OnGet(long job)
    {
        if (!Load(job))
            return NotFound();
        Input = new ReadingInput { FormKey = FormKey.New(), TakenOn = clock.Today, InstrumentId = Bed.InstrumentId };
        return Page();
    }

    public IActionResult OnPost(long job)
    {
        if (!Load(job))
            return NotFound();
        if (!ModelState.IsValid || this.Asks(Questions, Input.Confirmed))
            return Page();
        switch (store.Add(job, Input.ToEntry()))
        {
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                return this.Refuse(refused);
        }
        this.Say("The reading is saved.");
        return Redirect($"/shop/rackets/{Bed.RacketId}#readings");
    }

    private IReadOnlyList<Question> Questions => ReadingQuestions.Of(
        Bed, clock.Today, Input.TakenOn, Input.Value, Input.InstrumentId, (nameof(Input.TakenOn), nameof(Input.Value), nameof(Input.InstrumentId)));

    private bool Load(long job)
    {
        if (store.Bed(job) is not { } bed)
            return false;
        Bed = bed;
        return true;
    }
}
