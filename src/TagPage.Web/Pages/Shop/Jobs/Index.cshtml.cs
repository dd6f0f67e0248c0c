using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Jobs;
using TagPage.Core.Rackets;
using TagPage.Records.Condition;
using TagPage.Records.Deeds;
using TagPage.Records.Frames;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Prepaid;
using TagPage.Records.Readings;
using TagPage.Records.Shop;
using TagPage.Records.Stock;
using TagPage.Records.Storage;
using TagPage.Records.Visits;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class IndexModel(JobStore jobs, FrameStore frames, RangeConfirmStore confirms, FeelStore feels, ReadingStore readings, JobDeleteStore deletes, ChargeStore charges, PaymentStore payments, JobDeedStore deeds, ConditionStore conditions, StockStore stock, VisitStore visits, PrepaidStore prepaid, ShopStore shops, ShopClock clock) : RecordPage<JobRow>
{
    /// <summary>What the player said about the strings before these.</summary>
    public FeelStore.Row? Felt { get; private set; }

    /// <summary>Readings after the first.</summary>
    public IReadOnlyList<ReadingRow> Later { get; private set; } = [];

    /// <summary>Why it cannot be deleted; null where it can.</summary>
    public Refusal? WhyNotDeleted { get; private set; }

    public IReadOnlyList<ChargeLine> Lines { get; private set; } = [];

    public IReadOnlyList<PaymentStore.Row> Payments { get; private set; } = [];

    /// <summary>Who did what; nothing where one person alone signs in.</summary>
    public IReadOnlyList<JobDeedStore.Row> Deeds { get; private set; } = [];

    /// <summary>What the racket looked like when it came in.</summary>
    public ConditionRow Condition { get; private set; } = new();

    public PrepaidStore.OfTicket? Prepaid => prepaid.ForJob(User.AtShop(), Id);

    public ShopDetails Shop => shops.Get();

    public DateOnly Today => clock.Today;

    public DateTimeOffset Now => clock.Now;

    public DateOnly DayOf(DateTimeOffset instant) => clock.DayOf(instant);

    public string At(DateTimeOffset instant) => $"{Formats.Day(clock.DayOf(instant))}, {clock.OnTheWall(instant).ToString("HH:mm", CultureInfo.InvariantCulture)}";

    /// <summary>Which of its strings there is too little of, while it is to be strung from the shop’s own.</summary>
    public IEnumerable<string> Shortages => Saved.State is JobState.Waiting or JobState.OnMachine
        ? stock.OfJob(Saved.MainsSuppliedBy == Supplier.Shop ? Saved.MainsId : 0, Saved.CrossesSuppliedBy == Supplier.Shop ? Saved.CrossesId : 0).Select(StockWords.TooLittle).OfType<string>()
        : [];

    public bool IsLate => Saved.IsOpen && Saved.PromisedFor < Today;

    /// <summary>The day promised, if the shop is closed on it.</summary>
    public PromisedClosed? Closed => Saved.IsPromisedClosed(Shop.Opening, Today) ? PromisedClosed.On(Saved.PromisedFor!.Value, Shop.Opening) : null;

    /// <summary>What is recommended for its frame, if the ticket is outside.</summary>
    public TensionRange? Outside => frames.Find(Saved.Sport, Saved.Frame) is { } frame && RangeConfirmStore.IsOutside(frame.Range, Saved) ? frame.Range : null;

    /// <summary>What was confirmed about tensions outside, the newest first.</summary>
    public IReadOnlyList<RangeConfirmStore.Row> Confirmed => confirms.Of(Id);

    public bool IsConfirmed(TensionRange range) => Confirmed.Any(confirmed => RangeConfirmStore.Says(confirmed, Saved, range));

    protected override JobRow? Find(long id) => jobs.Get(User.AtShop(), id);

    /// <summary>Tickets are looked for by number: that of a visit has a page of its own.</summary>
    [NonHandler]
    public override void OnPageHandlerExecuting(PageHandlerExecutingContext context)
    {
        base.OnPageHandlerExecuting(context);
        if (context.Result is not null && visits.Get(User.AtShop(), Id) is not null)
            context.Result = Redirect($"/shop/visits/{Id}");
    }

    public void OnGet()
    {
        Felt = feels.Last(Saved.RacketId, exceptJob: Id);
        Lines = charges.Get(User.AtShop(), Id)!.Lines;
        Payments = payments.OfJob(User.AtShop(), Id);
        Deeds = deeds.Of(User.AtShop(), Id);
        Condition = conditions.OfJob(User.AtShop(), Id)!;
        WhyNotDeleted = deletes.WhyNot(Saved);
        Later = [.. readings.Of(Id).Where(reading => !reading.First)];
    }

    /// <summary>For tickets that no form asked about: answers to reminders, orders of clients, events.</summary>
    public IActionResult OnPostRange() => this.After(confirms.Confirm(User.AtShop(), Id), _ => this.GoOn($"/shop/jobs/{Id}", "The ticket now says that you confirmed this tension."));
}
