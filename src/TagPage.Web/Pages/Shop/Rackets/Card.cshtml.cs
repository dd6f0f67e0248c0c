using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Forecast;
using TagPage.Core.Rackets;
using TagPage.Core.Sports;
using TagPage.Core.Tags;
using TagPage.Records.Condition;
using TagPage.Records.Customising;
using TagPage.Records.LostAndFound;
using TagPage.Records.PlayTime;
using TagPage.Records.Rackets;
using TagPage.Records.Readings;
using TagPage.Records.Shop;
using TagPage.Records.Specs;
using TagPage.Records.Tags;
using TagPage.Records.Visits;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Pages.Shop.Shared;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Rackets;

public sealed class CardModel(
    CardStore cards, SpecStore specs, FrameOnFileStore frames, TagStore tags, LostStore lost, FoundLogStore found, ReadingStore readings, HoursStore hours, ConditionStore conditions, VisitStore visits, ShopStore shops, ShopClock clock)
    : RecordPage<CardStore.Card>
{
    public RestringBy Restring { get; private set; } = new() { State = RestringState.NotStrungYet };

    public FrameOnFile? Frame { get; private set; }

    public IReadOnlyList<SpecStore.Row> Specs => Frame?.Specs ?? [];

    public TagStore.Row? Tag { get; private set; }

    public IReadOnlyList<TagStore.Row> RetiredTags { get; private set; } = [];

    public IReadOnlyList<FoundLogRow> Found { get; private set; } = [];

    /// <summary>All readings of the strings that are in it, the first one on top.</summary>
    public IReadOnlyList<ReadingRow> Readings { get; private set; } = [];

    /// <summary>Hours logged since the stringing, the newest first.</summary>
    public IReadOnlyList<HoursStore.Row> Logged { get; private set; } = [];

    /// <summary>What it looked like each time it came in, the newest first.</summary>
    public IReadOnlyList<ConditionRow> Conditions { get; private set; } = [];

    /// <summary>Work without new strings, the newest first.</summary>
    public IReadOnlyList<VisitRow> Visits => visits.OfRacket(User.AtShop(), Id);

    public ShopDetails Shop => shops.Get();

    public DateOnly Today { get; private set; }

    /// <summary>The job whose strings are in the racket, or null.</summary>
    public CardStore.Job? InIt => Saved.Jobs.FirstOrDefault(j => j.StrungOn is not null) is { EndedOn: null } job && !(Saved.ElsewhereOn > job.StrungOn) ? job : null;

    public CardStore.Job? OnBench => Saved.Jobs.FirstOrDefault(j =>
        j.State is Core.Jobs.JobState.Waiting or Core.Jobs.JobState.OnMachine or Core.Jobs.JobState.Strung);

    /// <summary>Whether its client can be reminded of it: due, not at the bench, not put off, and reminders are wanted.</summary>
    public bool CanRemind => Saved.Reminders && OnBench is null && !(Saved.NotBefore > Today) && Restring.IsDue;

    /// <summary>The picture of how the tension drops; null where the strings are not known or not played.</summary>
    public LossPicture? Loss => Restring.Limits.OfType<TensionLimit>().FirstOrDefault()?.Curve is { } curve
        ? new LossPicture(curve, Today, Restring.Due, [.. Measured(doubtful: false)]) { Doubtful = [.. Measured(doubtful: true)] }
        : null;

    private IEnumerable<(DateOnly, double)> Measured(bool doubtful) =>
        Readings.Where(r => r.Doubtful == doubtful && r.LossPercent is not null).Select(r => (r.TakenOn, r.LossPercent!.Value));

    /// <summary>Whether the racket's rule lets tension decide.</summary>
    public bool TensionCounts => Restring.Limits.Any(limit => limit is { Kind: LimitKind.Tension, Counts: true });

    public bool IsInPlay => Saved.State is RacketState.InTurn or RacketState.Spare;

    public int DrawnMains => Saved.PatternMains ?? SportFacts.Of(Saved.Sport).DrawnMains;

    protected override CardStore.Card? Find(long id) => cards.Get(id);

    public void OnGet()
    {
        Today = clock.Today;
        Restring = Saved.Work(Today, Shop.StartingValues);
        Frame = frames.Get(Id);
        Readings = InIt is { } bed ? readings.Of(bed.Id) : [];
        Logged = hours.Since(User.AtShop(), Id, Saved.StrungOn);
        Conditions = conditions.OfRacket(User.AtShop(), Id);
        Found = [.. found.Of(Id).Select(e => new FoundLogRow(e, clock.OnTheWall(e.At), false))];
        var all = tags.Of(Id);
        Tag = all.FirstOrDefault(t => t.State == TagState.Live);
        RetiredTags = [.. all.Where(t => t.State == TagState.Retired)];
    }

    /// <summary>A lost racket is back.</summary>
    public IActionResult OnPostBack() =>
        this.After(lost.Back(User.AtShop(), Id), _ => this.GoOn($"/shop/rackets/{Id}", "The racket is back and no longer marked as lost."));

    /// <summary>Whether strangers see what it measures.</summary>
    public IActionResult OnPostSpecsOnTag(bool show) => this.After(specs.ShowOnTag(User.AtShop(), Id, show),
        _ => this.GoOn($"/shop/rackets/{Id}#specs", show ? "The tag page now shows the newest spec." : "The tag page no longer shows specs."));
}
