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
}
