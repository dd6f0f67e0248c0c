using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Condition;
using TagPage.Records.DueDates;
using TagPage.Records.Frames;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Readings;
using TagPage.Records.Shop;
using TagPage.Records.Stock;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Pages.Shop.Shared;
using TagPage.Web.Photos;

namespace TagPage.Web.Pages.Shop.Jobs;

[UploadLimit(PhotoDesk.MostBytes)]
public sealed class NewModel(NewJobStore store, JobStore jobs, FrameStore frames, FeelStore feels, ReadingStore readings, DoubtStore doubts, JobChoicesReader choices, PriceListStore prices, StockStore stock, ConditionStore conditions, PhotoDesk desk, ShopStore shops, ShopClock clock) : RecordPage<NewJobStore.RacketRow>
{
    [BindProperty(SupportsGet = true, Name = "racket")]
    public long RacketId { get; set; }

    [BindProperty]
    public NewInput Input { get; set; } = new();

    /// <summary>The job the form was filled in from.</summary>
    public JobRow? Last { get; private set; }

    /// <summary>What the player said about the last strings.</summary>
    public FeelStore.Row? Felt { get; private set; }

    public BedStore.Open? Bed { get; private set; }

    /// <summary>Its first reading, which one before cutting out is compared with.</summary>
    public MeasuredBed? Measured { get; private set; }

    /// <summary>Whether something was typed about the strings it came with, or is wrong there.</summary>
    public bool IsOldBedOpen => Input is not { OldEndedHow: null, OldEndedOn: null, OldReading: null }
        || ModelState.Any(entry => entry.Key.StartsWith("Input.Old", StringComparison.Ordinal) && entry.Value!.Errors.Count > 0);

    /// <summary>Photos that were sent with this form, now or before.</summary>
    public IReadOnlyList<PhotoEntry> Photos { get; private set; } = [];

    /// <summary>What was noted of the racket the last time.</summary>
    public ConditionRow? Before => conditions.OfRacket(User.AtShop(), RacketId) is [var last, ..] ? last : null;

    /// <summary>Whether something was noted with this form, or is wrong there.</summary>
    public bool IsConditionOpen => Photos.Count > 0 || !Input.Condition.ToEntry().IsEmpty
        || ModelState.Any(entry => entry.Key.StartsWith("Input.Condition.", StringComparison.Ordinal) && entry.Value!.Errors.Count > 0);

    /// <summary>What the catalogue knows about its frame.</summary>
    public FrameStore.Row? Frame => frames.Find(Saved.Sport, Saved.Frame);

    public JobChoices Choices => choices.Of(Last);

    public ShopDetails Shop => shops.Get();

    public PriceList Prices => prices.Get();

    protected override long Asked => RacketId;

    protected override NewJobStore.RacketRow? Find(long id)
    {
        if (store.Racket(User.AtShop(), id) is not { } racket)
            return null;
        Last = racket.LastJobId is { } last ? jobs.Get(User.AtShop(), last) : null;
        Bed = store.CurrentBed(id);
        Felt = feels.Last(id);
        Measured = Bed is null ? null : readings.Bed(User.AtShop(), Bed.JobId);
        return racket;
    }

    public void OnGet() => Input = Filled(FormKey.New());

    public async Task<IActionResult> OnPost()
    {
        await TakePhotos();
        return Save();
    }

    /// <summary>They are kept whatever becomes of the form: a browser does not send a file twice.</summary>
    private async Task TakePhotos()
    {
        var (photos, faults) = await PhotoDesk.Read(Input.Condition.Files());
        if (faults.Count > 0)
            this.Refuse(new FieldFault(PhotosField, string.Join(' ', faults)));
        if (Input.Condition.PhotosKey is { } before && desk.Kept(before) is null && !store.IsSent(Input.FormKey))
        {
            this.Refuse(new FieldFault(PhotosField, "Photos that were sent before are kept for an hour, and that is over. Choose them again."));
            Input = Input with { Condition = Input.Condition with { PhotosKey = null } };
        }
        if (photos.Count > 0)
            Input = Input with { Condition = Input.Condition with { PhotosKey = desk.Keep(Input.Condition.PhotosKey, photos) } };
        this.ShowAnew($"{nameof(Input)}.{nameof(Input.Condition)}.{nameof(Input.Condition.PhotosKey)}");
        Photos = desk.Kept(Input.Condition.PhotosKey) ?? [];
        if (Photos.Count > PhotoStore.MostOfJob)
            this.Note([new TooManyPhotos(PhotoStore.MostOfJob, PhotoStore.MostOfJob) with { Field = PhotosField }]);
    }

    private const string PhotosField = $"{nameof(NewInput.Condition)}.{nameof(ConditionInput.Photos)}";

    /// <summary>The last job again in one press.</summary>
    public IActionResult OnPostSame()
    {
        if (Last is null)
            return NotFound();
        Input = Filled(Input.FormKey);
        ModelState.Clear();
        return Save();
    }

    private NewInput Filled(string formKey)
    {
        var input = JobFill.New(Last, formKey, clock.Today, Shop, Prices.Prices(Saved.Sport)) with { OldInstrumentId = Measured?.InstrumentId };
        bool Has(long? stop) => stop is null or 0 || Choices.Stops.Any(known => known.Id == stop);
        return Has(input.LeftAtId) && Has(input.CollectAtId) ? input : input with { LeftAtId = null, CollectAtId = null };
    }

    private IActionResult Save()
    {
        var order = Input.ToOrder();
        var days = new JobDays { ReceivedOn = Input.ReceivedOn, PromisedFor = Input.PromisedFor };
        this.Note([
            .. order.Faults(Saved.Sport, Shop),
            .. days.Faults(clock.Today),
            .. DayRule.Faults(nameof(Input.OldEndedOn), Input.OldEndedOn, clock.Today),
            .. ReadingRules.Faults(Input.OldReading, Input.OldInstrumentId, nameof(Input.OldReading), nameof(Input.OldInstrumentId))]);
        if (!ModelState.IsValid || this.Asks([.. OnBench, .. order.Oddities(Saved.Sport, Last, Frame), .. order.Brought(Last, stock.Sold()), .. days.Oddities(Shop.Opening), .. ReadingOddities], Input.Confirmed))
            return Page();
        return this.After(store.Add(User.AtShop(), RacketId, Input.ToEntry(Photos)), id =>
        {
            desk.Remove(Input.Condition.PhotosKey);
            return this.GoOn($"/shop/jobs/{id}", $"Ticket {jobs.Get(User.AtShop(), id)!.Ticket} is waiting at the bench.", "Back to the bench", "/shop");
        });
    }

    private IEnumerable<Oddity> OnBench => store.IsSent(Input.FormKey) ? [] : Saved.SecondTicket(nameof(Input.ReceivedOn));

    private IReadOnlyList<Oddity> ReadingOddities => Measured is { } bed && Input.OldReading is not null
        ? doubts.Oddities(bed, clock.Today, (Input.OldEndedOn ?? Input.ReceivedOn, null, Input.OldReading, Input.OldInstrumentId),
            (nameof(Input.OldEndedOn), nameof(Input.OldReading), nameof(Input.OldInstrumentId)))
        : [];
}
