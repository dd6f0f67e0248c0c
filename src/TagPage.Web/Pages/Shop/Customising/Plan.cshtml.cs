using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Customising;
using TagPage.Core.Customising.Planning;
using TagPage.Records.Customising;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Customising;

/// <summary>From what a racket measures to what is wanted: the plan, its check list, and that it was done.</summary>
public sealed class PlanModel(FrameOnFileStore frames, CustomiseStore store, ShopStore shops, ShopClock clock) : RecordPage<FrameOnFile>
{
    [BindProperty(SupportsGet = true)]
    public WantedInput Input { get; set; } = new();

    public CustomPlan? Plan { get; private set; }

    public CustomisingValues Values => shops.Get().CustomisingValues;

    public SpecWords Words => new(Values, Saved.Racket.Sport);

    public DateOnly Today => clock.Today;

    private bool IsAsked => (Input.Weight ?? Input.Balance ?? Input.SwingWeight) is not null;

    private Wanted Wanted => Input.ToWanted(Values, Words.BalanceUnit, Saved.LengthCm);

    protected override FrameOnFile? Find(long id) => frames.Get(id);

    public void OnGet()
    {
        Input = Input with { Most = MostOf(Saved.Places), Material = Input.Material ?? Tape.Usual(Saved.Junior), TakeOff = IsAsked ? Input.TakeOff : Saved.Present.Count > 0 };
        if (!IsAsked && Request.Query.ContainsKey("Input.Weight") && ModelState.IsValid)
            ModelState.AddModelError("Input.Weight", "Enter at least one: weight, balance or swing weight.");
        if (IsToBeShown())
            Show();
    }

    public IActionResult OnPost()
    {
        if (!IsToBeShown())
            return Page();
        var seen = Input.Seen;
        Show();
        if (seen != Plan!.Mark)
            return this.Refuse(new Outcome.Refused(new PlanOutdated()));
        return this.After(store.Apply(User.AtShop(), Input.FormKey, [(Id, Plan.ToEntry(clock.Today, Values.Tolerances))]), _ => this.GoOn(
            $"/shop/rackets/{Id}#specs", $"Racket {Saved.Racket.Number} is customised, and its new spec is worked out. Measure it again to be sure.",
            "Print its spec label", $"/shop/labels/racket/{Id}?purpose=Measures"));
    }

    // By name: what was typed for a place stays with it, whatever was asked.
    private List<MostInput> MostOf(IEnumerable<FramePlace> places) =>
        [.. places.Where(place => !place.OnStrings).Select(place => Input.Most.FirstOrDefault(most => most.Place == place.Name) ?? new MostInput { Place = place.Name })];

    private bool IsToBeShown()
    {
        foreach (var (field, says) in WantedInput.Faults(Wanted))
            ModelState.AddModelError(field, says);
        return ModelState.IsValid && IsAsked && Saved.Spec is not null;
    }

    private void Show()
    {
        Plan = CustomPlan.Of(Saved, Wanted, Input.Locks(Values), Input.Material ?? Tape.Usual(Saved.Junior), Values);
        Input = Input with { Seen = Plan.Mark, FormKey = Input.FormKey.Length > 0 ? Input.FormKey : FormKey.New() };
        ModelState.Remove("Input.Seen");
    }
}
