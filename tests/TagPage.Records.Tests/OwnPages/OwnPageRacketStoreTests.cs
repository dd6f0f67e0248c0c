using TagPage.Records.OwnPages;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.OwnPages;

public sealed class OwnPageRacketStoreTests : IDisposable
{
    private readonly Street _street = new();

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Price_of_the_same_again_is_that_of_the_order_that_would_be_repeated()
    {
        var store = new OwnPageRacketStore(_street.Database);
        _street.Records.Change("""
            UPDATE job SET price_minor = 2450 WHERE id = @Strung;
            INSERT INTO job (ticket, racket_id, state, mains_id, crosses_id, mains_supplied_by, crosses_supplied_by, mains_tension, crosses_tension, tension_unit, received_on, price_minor)
            SELECT 7700, racket_id, 'Waiting', mains_id, crosses_id, mains_supplied_by, crosses_supplied_by, mains_tension, crosses_tension, tension_unit, '2026-11-20', 2900 FROM job WHERE id = @Strung;
            """, new { _street.Strung });

        Assert.Equal(2900, store.LastPrice(_street.Odalys, _street.Racket));

        _street.Records.Change("UPDATE job SET state = 'Cancelled' WHERE ticket = 7700");
        Assert.Equal(2450, store.LastPrice(_street.Odalys, _street.Racket));
        Assert.Null(store.LastPrice(_street.Ewan, _street.Racket));
    }

    [Fact]
    public void Household_sees_what_is_still_to_pay_and_that_it_is_paid_unless_somebody_else_pays()
    {
        var store = new OwnPageRacketStore(_street.Database);
        _street.Records.Change("UPDATE job SET state = 'Strung', collected_on = NULL, price_minor = 3000, paid_on = NULL WHERE id = @Strung", new { _street.Strung });
        Assert.Equal((3000L, 3000L, null), Money());

        _street.Records.Change("""
            INSERT INTO payment (id, client_id, paid_on, amount_minor, method, made_at, made_by) VALUES (1, @Odalys, '2026-11-25', 1000, 'Cash', '2026-11-25T10:00:00Z', 'Shop');
            INSERT INTO payment_share (payment_id, job_id, amount_minor, made_at, made_by) VALUES (1, @Strung, 1000, '2026-11-25T10:00:00Z', 'Shop');
            """, new { _street.Odalys, _street.Strung });
        Assert.Equal((3000L, 2000L, null), Money());

        _street.Records.Change("UPDATE job SET paid_on = '2026-11-25' WHERE id = @Strung", new { _street.Strung });
        Assert.Equal(new DateOnly(2026, 11, 25), Money().PaidOn);

        _street.Records.Change("INSERT INTO payer (id, name) VALUES (1, 'Eastmere Academy'); UPDATE client SET payer_id = 1");
        Assert.Equal((null, null, null), Money());

        (long? Price, long? ToPay, DateOnly? PaidOn) Money() => store.Get(_street.Odalys, _street.Racket) is { } r ? (r.PriceMinor, r.ToPayMinor, r.PaidOn) : throw new InvalidOperationException();
    }
}
