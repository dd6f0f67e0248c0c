using TagPage.Core.Money;
using TagPage.Core.Strings;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Stock;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Stock;

/// <summary>Runa keeps account of the string that Pim’s racket is strung with: what comes in, what jobs take, what she counts.</summary>
public sealed class StockStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly StockStore _store;
    private readonly long _job;
    private readonly long _string;

    public StockStoreTests()
    {
        new StockKeeper(_street.Database, _street.Time).Attach();
        _store = new StockStore(_street.Database, _street.Clock);
        _job = _street.Records.Job(_street.Racket);
        _string = Job().MainsId;
        _street.Records.Change("UPDATE job SET crosses_id = mains_id, mains_supplied_by = 'Shop', crosses_supplied_by = 'Shop' WHERE id = @_job", new { _job });
        Assert.IsType<Outcome.Done>(_store.Keep(Who.Shop, _string, new StockEntry { Unit = StockUnit.Set, RacketCm = 1_200 }));
    }

    private MoveStore Moves => new(_street.Database, _street.Clock);

    private long Left => _store.Get(_string)!.LeftCm;

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Racket_takes_its_length_when_it_is_strung_and_gives_it_back_when_that_was_a_mistake()
    {
        Buy(12_000);
        Assert.Equal((12_000, 1_200), (Left, _store.Get(_string)!.WaitingCm));

        String();

        Assert.Equal((10_800, 0), (Left, _store.Get(_string)!.WaitingCm));
        new BackStore(_street.Database, _street.Time).Back(Who.Shop, _job, Job().State);
        Assert.Equal((12_000, 1_200), (Left, _store.Get(_string)!.WaitingCm));
        Assert.Equal([12_000, -1_200, 1_200], _store.Moves(_string).Select(move => move.Centimetres).Reverse());
    }

    [Fact]
    public void Hybrid_takes_half_and_the_clients_own_string_takes_nothing()
    {
        Buy(12_000);
        var other = _street.Records.Kind("Tarnholm Furrow");
        _street.Records.Change("UPDATE job SET crosses_id = @other WHERE id = @_job", new { other, _job });
        String();
        Assert.Equal(11_400, Left);

        _street.Records.Change("UPDATE job SET mains_supplied_by = 'Client' WHERE id = @_job", new { _job });

        Assert.Equal(12_000, Left);
    }

    [Fact]
    public void Length_on_the_price_is_what_the_racket_takes_also_where_it_is_corrected_later()
    {
        Buy(12_000);
        Charge(1_051);
        String();
        Assert.Equal(12_000 - 1_051, Left);

        Charge(1_100);

        Assert.Equal(12_000 - 1_100, Left);
        _street.Records.Change("DELETE FROM charge");
        Assert.Equal(12_000 - 1_200, Left);
    }

    [Fact]
    public void Each_string_has_an_account_of_its_own_and_one_without_has_none()
    {
        var other = _street.Records.Kind("Tarnholm Furrow");
        Assert.Null(_store.Get(other));
        _store.Keep(Who.Shop, other, new StockEntry { Unit = StockUnit.Metre, RacketCm = 1_000 });

        Buy(12_000);

        Assert.Equal([(_string, 12_000L, 1_200L), (other, 0L, 0L)], _store.List().Select(row => (row.StringId, row.LeftCm, row.WaitingCm)));
    }

    [Fact]
    public void Racket_that_is_handed_out_takes_nothing_twice()
    {
        Buy(12_000);
        String();

        Moves.Collect(Who.Shop, _job, new HandOutEntry { CollectedOn = Street.Today });

        Assert.Equal(10_800, Left);
    }

    [Fact]
    public void New_length_of_a_set_changes_nothing_that_was_taken()
    {
        Buy(12_000);
        String();

        Assert.IsType<Outcome.Done>(_store.Keep(Who.Shop, _string, new StockEntry { Version = 1, Unit = StockUnit.Set, RacketCm = 1_000 }));
        Moves.Collect(Who.Shop, _job, new HandOutEntry { CollectedOn = Street.Today });

        Assert.Equal(10_800, Left);
    }

    [Fact]
    public void Rackets_strung_before_the_account_began_have_taken_nothing()
    {
        Buy(1_200);

        _street.Records.Change("UPDATE job SET mains_supplied_by = 'Client', crosses_supplied_by = 'Client' WHERE id = @Strung", new { _street.Strung });
        _street.Records.Change("UPDATE job SET mains_id = @_string, crosses_id = @_string, mains_supplied_by = 'Shop', crosses_supplied_by = 'Shop' WHERE id = @Strung", new { _string, _street.Strung });

        Assert.Equal(1_200, Left);
    }

    [Fact]
    public void Stock_goes_below_zero_rather_than_hold_a_job_up_and_says_so()
    {
        Assert.IsType<Outcome.Done>(String());

        Assert.True(_store.Get(_string) is { LeftCm: -1_200, IsBelowZero: true });
        Assert.Equal(1, _store.Low());
    }

    [Fact]
    public void Count_writes_down_the_difference_once_and_it_stays()
    {
        Buy(12_000);
        String();

        Count(10_000, "aaaa");
        Count(10_000, "aaaa");

        Assert.Equal(10_000, Left);
        Assert.Equal([(StockMoveKind.Counted, -800L, 10_000L), (StockMoveKind.Used, -1_200L, 10_800L), (StockMoveKind.Bought, 12_000L, 12_000L)],
            _store.Moves(_string).Select(move => (move.Kind, move.Centimetres, move.LeftCm)));
    }

    [Fact]
    public void What_a_racket_takes_costs_the_average_of_what_was_paid()
    {
        // By hand: 6,000 + 9,000 for 12,000 + 12,000 cm is 0.625 a cm; the 500 cm of unknown price do not count. 1,200 cm: 750.
        Buy(12_000, 6_000);
        Buy(12_000, 9_000);
        Buy(500);

        Assert.Equal(750, _store.Get(_string)!.CostOf(1_200));
    }

    [Fact]
    public void Numbers_out_of_all_bounds_and_forms_from_before_a_change_change_nothing()
    {
        Buy(StockStore.Most);

        Assert.IsType<StockTooLong>(Assert.IsType<Outcome.Refused>(Buy(1)).Why);
        Assert.IsType<Outcome.Refused>(_store.Keep(Who.Shop, _string, new StockEntry { RacketCm = 1_000 }));
        Assert.IsType<Outcome.Refused>(_store.Keep(Who.Shop, _string, new StockEntry { Version = 7, RacketCm = 1_000 }));
        Assert.IsType<Outcome.Absent>(_store.Keep(Who.Shop, 4711, new StockEntry { RacketCm = 1_000 }));
        Assert.Equal((StockStore.Most, 1_200), (Left, _store.Get(_string)!.RacketCm));
    }

    private JobRow Job() => new JobStore(_street.Database).Get(Who.Shop, _job)!;

    private Outcome Buy(int centimetres, long? cost = null) => _store.Buy(Who.Shop, _string, new BoughtEntry { FormKey = FormKey.New(), Centimetres = centimetres, CostMinor = cost });

    private void Count(int centimetres, string key) => _store.Count(Who.Shop, _string, new CountEntry { FormKey = key.PadRight(FormKey.New().Length, 'a'), Centimetres = centimetres });

    private Outcome String() => Moves.MarkStrung(Who.Shop, _job, new StrungEntry { StrungOn = Street.Today });

    private void Charge(int centimetres) => new ChargeStore(_street.Database, _street.Clock)
        .Save(Who.Shop, _job, Job().Version, [new ChargeLine { Kind = ChargeKind.Strings, Centimetres = centimetres, MetreMinor = 100, AmountMinor = centimetres }]);
}
