using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Customising;
using TagPage.Core.Customising.Planning;
using TagPage.Core.Sports;
using TagPage.Records.Customising;
using TagPage.Records.Players;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Customising;

/// <summary>A player's frames side by side: how far apart they are, and the plan that makes them the same.</summary>
public sealed class SetModel(PlayerStore players, FrameOnFileStore frames, CustomiseStore store, ShopStore shops, ShopClock clock) : RecordPage<PlayerStore.Row>
{
    /// <summary>More at a time would keep the owner waiting.</summary>
    public const int MostFrames = 8;

    [BindProperty(SupportsGet = true)]
    public SetInput Input { get; set; } = new();

    public IReadOnlyList<FrameOnFile> All { get; private set; } = [];

    public IReadOnlyList<FrameOnFile> Chosen { get; private set; } = [];

    public SetPlan? Plan { get; private set; }

    /// <summary>Whether a plan was asked for frames that nobody can tell apart, nor from what is wanted.</summary>
    public bool IsMatched { get; private set; }

    public CustomisingValues Values => shops.Get().CustomisingValues;

    public DateOnly Today => clock.Today;

    public SpecWords Words => new(Values, Chosen is [var first, ..] ? first.Racket.Sport : Sport.Tennis);

    /// <summary>Frames whose newest spec follows from a plan that was done, while no other plan is on the page.</summary>
    public IReadOnlyList<FrameOnFile> Done => Plan is null ? [.. Chosen.Where(frame => frame.Spec!.Kind == SpecKind.Customised)] : [];

    private Wanted Wanted => Input.ToWanted(Values, Words.SetBalanceUnit, Chosen[0].LengthCm);

    protected override PlayerStore.Row? Find(long id) => players.Get(id);

    public void OnGet() => Show();

    public IActionResult OnPost()
    {
        var seen = Input.Seen;
        Show();
        if (Plan is null)
            return Page();
        if (seen != Input.Seen)
            return this.Refuse(new Outcome.Refused(new PlanOutdated()));
        return this.After(store.Apply(User.AtShop(), Input.FormKey, [.. Plan.Plans.Select(plan => (plan.Frame.Racket.Id, plan.ToEntry(clock.Today, Values.Tolerances)))]),
            _ => this.GoOn($"/shop/customise/set/{Id}", "The set is customised; the new specs are worked out. Measure each racket again to be sure."));
    }

    private void Show()
    {
        All = frames.OfPlayer(Id);
        var measured = All.Where(frame => frame.Spec is not null).ToList();
        Input = Input with { Material = Input.Material ?? Tape.Usual(Saved.Junior) };
        if (Input.Frames.Count == 0 && !Input.Match)
            Input = Input with { Frames = [.. measured.Where(frame => frame.Racket.Sport == measured[0].Racket.Sport).Take(MostFrames).Select(frame => frame.Racket.Id)] };
        Chosen = [.. measured.Where(frame => Input.Frames.Contains(frame.Racket.Id))];
        Input = Input with { Most = MostOf(Chosen.SelectMany(frame => frame.Places)) };
        if (ModelState.IsValid)
            this.ShowAnew("Input.Most");
        if (ModelState.IsValid && Input.Match && Fault() is { } fault)
            ModelState.AddModelError("", fault);
        if (ModelState.IsValid && Input.Match)
            AddFaults();
        if (ModelState.IsValid && Input.Match)
            Match();
    }

    private void AddFaults()
    {
        foreach (var (field, says) in WantedInput.Faults(Wanted))
            ModelState.AddModelError(field, says);
    }

    // By name: what was typed for a place stays with it, whichever frames are chosen.
    private List<MostInput> MostOf(IEnumerable<FramePlace> places) =>
    [
        .. places.Where(place => !place.OnStrings).OrderBy(place => place.AtCm).Select(place => place.Name).Distinct()
            .Select(name => Input.Most.FirstOrDefault(most => most.Place == name) ?? new MostInput { Place = name }),
    ];

    private string? Fault() =>
        Chosen.Count < 2 ? "Choose at least two frames that were measured."
        : Chosen.Count > MostFrames ? $"Choose at most {MostFrames} frames at a time."
        : Chosen.Any(frame => frame.Racket.Sport != Chosen[0].Racket.Sport) ? "Choose frames of one sport."
        : Input.Like is { } like && Chosen.All(frame => frame.Racket.Id != like) ? "The frame that the others are matched to must be one of the set."
        : null;

    private void Match()
    {
        var like = Chosen.FirstOrDefault(frame => frame.Racket.Id == Input.Like);
        var wanted = like is null ? Wanted : new Wanted();
        IsMatched = MatchedSet.IsMatched([.. Chosen.Select(frame => frame.StrungFigures)], wanted);
        if (IsMatched && !Input.Anyway)
            return;
        Plan = like is null
            ? SetPlan.Of(Chosen, wanted, Input.Locks(Values), Input.Material!.Value, Values)
            : SetPlan.Like(like, [.. Chosen.Where(frame => frame != like)], Input.Locks(Values), Input.Material!.Value, Values);
        Input = Input with
        {
            Seen = string.Join(" | ", Plan.Plans.Select(plan => plan.Mark)),
            FormKey = Input.FormKey.Length > 0 ? Input.FormKey : FormKey.New(),
        };
    }
}
