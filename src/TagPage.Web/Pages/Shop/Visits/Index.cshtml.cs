using TagPage.Records.Condition;
using TagPage.Records.Deeds;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Visits;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Visits;

public sealed class IndexModel(VisitStore store, JobStore jobs, ChargeStore charges, PaymentStore payments, JobDeedStore deeds, ConditionStore conditions, ShopStore shops, ShopClock clock) : RecordPage<VisitRow>
{
    /// <summary>Whose racket it is, and what was paid.</summary>
    public JobRow Job { get; private set; } = new();

    public IReadOnlyList<ChargeLine> Lines { get; private set; } = [];

    public IReadOnlyList<PaymentStore.Row> Payments { get; private set; } = [];

    /// <summary>Who noted it; null where one person alone signs in.</summary>
    public string? By { get; private set; }

    /// <summary>What the racket looked like when it came in.</summary>
    public ConditionRow Condition => conditions.OfJob(User.AtShop(), Id)!;

    public ShopDetails Shop => shops.Get();

    public DateOnly Today => clock.Today;

    public DateOnly DayOf(DateTimeOffset instant) => clock.DayOf(instant);

    protected override VisitRow? Find(long id) => store.Get(User.AtShop(), id);

    public void OnGet()
    {
        Job = jobs.GetWithVisits(User.AtShop(), Id)!;
        Lines = charges.Get(User.AtShop(), Id)!.Lines;
        Payments = payments.OfJob(User.AtShop(), Id);
        By = deeds.Of(User.AtShop(), Id).LastOrDefault(deed => deed.Deed == JobDeed.Done)?.By;
    }
}
