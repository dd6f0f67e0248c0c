using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Readings;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class IndexModel(JobStore jobs, FeelStore feels, ReadingStore readings, ChargeStore charges, PaymentStore payments, ShopStore shops, ShopClock clock) : RecordPage<JobRow>
{
    /// <summary>What the player said about the strings before these.</summary>
    public FeelStore.Row? Felt { get; private set; }

    /// <summary>Readings after the first.</summary>
    public IReadOnlyList<ReadingRow> Later { get; private set; } = [];

    public IReadOnlyList<ChargeLine> Lines { get; private set; } = [];

    public IReadOnlyList<PaymentStore.Row> Payments { get; private set; } = [];

    public ShopDetails Shop => shops.Get();

    public DateOnly Today => clock.Today;

    public DateOnly DayOf(DateTimeOffset instant) => clock.DayOf(instant);

    public bool IsLate => Saved.IsOpen && Saved.PromisedFor < Today;

    /// <summary>The day promised, if the shop is closed on it.</summary>
    public PromisedClosed? Closed => Saved.IsPromisedClosed(Shop.Opening, Today) ? PromisedClosed.On(Saved.PromisedFor!.Value, Shop.Opening) : null;

    protected override JobRow? Find(long id) => jobs.Get(Who.Shop, id);

    public void OnGet()
    {
        Felt = feels.Last(Saved.RacketId, exceptJob: Id);
        Lines = charges.Get(Who.Shop, Id)!.Lines;
        Payments = payments.OfJob(Who.Shop, Id);
        Later = [.. readings.Of(Id).Where(reading => !reading.First)];
    }
}
