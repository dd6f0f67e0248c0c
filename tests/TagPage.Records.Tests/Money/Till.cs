using TagPage.Core.Money;
using TagPage.Records.Clients;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Money;

/// <summary>Odalys's street with its money: jobs of 24.50 and everything that is done about them.</summary>
internal sealed class Till(Street street)
{
    public ChargeStore Charges => new(street.Database, street.Clock);
    public PaymentStore Payments => new(street.Database, street.Clock);
    public PriceListStore Prices => new(street.Database);
    public MoveStore Moves => new(street.Database, street.Clock);
    public NewJobStore News => new(street.Database, new ShopStore(street.Database), street.Clock);

    public JobRow Job(long id) => new JobStore(street.Database).Get(Who.Shop, id)!;

    public ChargeStore.Sheet Sheet(long job) => Charges.Get(Who.Shop, job)!;

    public static PaymentEntry Paid(long? minor = null, PaymentMethod? method = PaymentMethod.Cash) =>
        new() { FormKey = FormKey.New(), PaidOn = Street.Today, Method = method, AmountMinor = minor };

    public static ChargeLine Line(ChargeKind kind, long minor) => new() { Kind = kind, AmountMinor = minor };

    /// <summary>A price of one line.</summary>
    public void Reprice(long job, long minor) =>
        Assert.IsType<Outcome.Done>(Charges.Save(Who.Shop, job, Sheet(job).Version, [Line(ChargeKind.Labour, minor)]));

    /// <summary>The academy pays for Odalys from now on.</summary>
    public long Academy()
    {
        var payer = Assert.IsType<Outcome.Done>(new PayerStore(street.Database, new ShopStore(street.Database), street.Time)
            .Add(Who.Shop, new PayerEntry { FormKey = FormKey.New(), Name = "Hall Academy" })).Id;
        street.Records.Change("UPDATE client SET payer_id = @payer WHERE id = @Odalys", new { payer, street.Odalys });
        return payer;
    }

    /// <summary>Nothing is lost: what came in is what is laid against jobs and what is free.</summary>
    public void Balances() => Assert.Equal("", street.Records.Text("""
        SELECT group_concat(p.id) FROM payment p
        WHERE p.amount_minor < (SELECT COALESCE(SUM(s.amount_minor), 0) FROM payment_share s WHERE s.payment_id = p.id) AND p.undoes_id IS NULL
        """));
}
