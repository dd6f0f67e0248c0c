using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Core.Sports;
using TagPage.Core.Strings;
using TagPage.Core.Units;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Readings;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Jobs;

/// <summary>What a job cannot be, whatever form it comes from, and what is only odd.</summary>
public sealed class JobRuleTests : IDisposable
{
    private static readonly DateOnly Tomorrow = Street.Today.AddDays(1);

    private readonly Street _street = new();
    private readonly long _job;

    public JobRuleTests() => _job = _street.Records.Job(_street.Racket);

    public void Dispose() => _street.Dispose();

    private MoveStore Moves => new(_street.Database, _street.Clock);

    private ShopStore Shops => new(_street.Database);

    [Fact]
    public void Nothing_happens_on_a_day_that_is_still_to_come()
    {
        Assert.Equal("StrungOn", _street.Refused<DayToCome>(() => Strung(new() { StrungOn = Tomorrow })).Field);
        Assert.Equal("PaidOn", _street.Refused<PaidInFuture>(() => new PaymentStore(_street.Database, _street.Clock)
            .PayJob(Who.Shop, _job, new PaymentEntry { PaidOn = Tomorrow, Method = PaymentMethod.Card })).Field);
        Assert.Equal("ReceivedOn", _street.Refused<DayToCome>(() => Take(Order with { ReceivedOn = Tomorrow })).Field);
        Assert.Equal("OldEndedOn", _street.Refused<DayToCome>(() => Take(Order with { OldEndedHow = BedEnd.Wear, OldEndedOn = Tomorrow })).Field);
        _street.Refused<YearUnlikely>(() => Take(Order with { ReceivedOn = new(1926, 11, 25) }));

        Strung(new() { StrungOn = Street.Today });
        Assert.Equal("CollectedOn", _street.Refused<DayToCome>(() => Moves.Collect(Who.Shop, _job, new() { CollectedOn = Tomorrow })).Field);
    }

    [Theory]
    [InlineData(Supplier.Client, 1, null, null, "MainsSuppliedBy")]
    [InlineData(Supplier.Shop, 1, Supplier.Client, null, "CrossesSuppliedBy")]
    [InlineData(Supplier.Client, 9, null, 1, "CrossesSuppliedBy")]
    [InlineData(Supplier.Client, 9, null, null, null)]
    [InlineData(Supplier.Shop, 1, null, null, null)]
    [InlineData(Supplier.Client, 2, null, null, null)]
    public void String_that_the_shop_sells_is_asked_about_where_it_comes_from_the_client_but_not_if_it_did_before(Supplier by, int mains, Supplier? crossesBy, int? crosses, string? place)
    {
        var last = new JobRow { MainsId = 2, CrossesId = 2, MainsSuppliedBy = Supplier.Client, CrossesSuppliedBy = Supplier.Client };
        var order = new JobOrder { MainsId = mains, CrossesId = crosses, MainsSuppliedBy = by, CrossesSuppliedBy = crossesBy };

        Assert.Equal(place is null ? [] : [place], order.Brought(last, new HashSet<long> { 1, 2 }).Select(odd => odd.Field));
    }

    [Fact]
    public void Days_come_in_the_order_in_which_they_can_happen()
    {
        _street.Refused<StrungBeforeIn>(() => Strung(new() { StrungOn = new(2026, 11, 23) }));
        Strung(new() { StrungOn = Street.Today });
        _street.Refused<CollectedBeforeStrung>(() => Moves.Collect(Who.Shop, _job, new() { CollectedOn = new(2026, 11, 24) }));
        _street.Refused<PromisedBeforeIn>(() => Take(Order with { PromisedFor = new(2026, 11, 24) }));
        _street.Refused<PromisedTooLate>(() => Take(Order with { PromisedFor = new(2027, 11, 26) }));
        _street.Refused<EndsBeforeStrung>(() => Take(Order with { OldEndedHow = BedEnd.Wear, OldEndedOn = new(2026, 11, 24) }));
    }

    [Fact]
    public void Changed_job_is_held_to_the_same_days()
    {
        _street.Refused<CollectedUnstrung>(() => Change(Changed with { CollectedOn = Street.Today }));
        _street.Refused<EndedUnstrung>(() => Change(Changed with { EndedOn = Street.Today, EndedHow = BedEnd.Wear }));
        _street.Refused<EndWithoutDay>(() => Change(Changed with { EndedHow = BedEnd.Wear }));
        _street.Refused<EndWithoutReason>(() => Change(Changed with { StrungOn = Street.Today, EndedOn = Street.Today }));
        _street.Refused<EndsBeforeStrung>(() => Change(Changed with { StrungOn = Street.Today, EndedOn = new(2026, 11, 24), EndedHow = BedEnd.Wear }));
        _street.Check(true, () => Change(Changed with { StrungOn = Street.Today, EndedOn = Street.Today, EndedHow = BedEnd.Machine }));
    }

    [Fact]
    public void First_reading_needs_an_instrument_that_there_is()
    {
        _street.Refused<InstrumentMissing>(() => Strung(new() { StrungOn = Street.Today, Reading = 62 }));
        _street.Refused<InstrumentUnknown>(() => Strung(new() { StrungOn = Street.Today, Reading = 62, InstrumentId = 99 }));
        _street.Refused<InstrumentUnknown>(() => Change(Changed with { StrungOn = Street.Today, Reading = 62, InstrumentId = 99 }));
        _street.Refused<ReadingUnlikely>(() => Strung(new() { StrungOn = Street.Today, Reading = 0, InstrumentId = 99 }));
    }

    [Fact]
    public void Order_names_strings_tensions_and_a_price_that_there_are()
    {
        _street.Refused<MainsMissing>(() => Take(Order with { MainsId = null }));
        _street.Refused<NewStringUnnamed>(() => Take(Order with { NewString = new() { Material = Material.Aramid, GaugeMm = 1.2m } }));
        _street.Refused<NewStringOfNothing>(() => Take(Order with { NewString = new() { Name = "Marram", GaugeMm = 1.2m } }));
        _street.Refused<NewStringGaugeless>(() => Take(Order with { NewString = new() { Name = "Marram", Material = Material.Aramid } }));
        Assert.Equal("MainsTension", _street.Refused<TensionImpossible>(() => Take(Order with { MainsTension = 101 })).Field);
        Assert.Equal("CrossesTension", _street.Refused<TensionImpossible>(() => Take(Order with { CrossesTension = 101 })).Field);
        _street.Refused<PriceUnread>(() => Take(Order with { Price = 24.505m }));
    }

    [Fact]
    public void Unusual_tension_is_asked_about_unless_the_racket_had_it_before()
    {
        var order = new JobOrder { MainsTension = new Tension(80, TensionUnit.Lb) };

        var odd = Assert.Single(order.Oddities(Sport.Tennis, asked: null));
        Assert.Equal(new TensionUnusual("MainsTension", Sport.Tennis, new Tension(80, TensionUnit.Lb)), odd);
        Assert.Empty(order.Oddities(Sport.Tennis, new JobRow { MainsTension = 80, CrossesTension = 80 }));
        Assert.Single(order.Oddities(Sport.Tennis, new JobRow { MainsTension = 80, CrossesTension = 52 }));
    }

    private NewJobEntry Order => new() { FormKey = FormKey.New(), MainsId = _street.Records.Kind(), MainsTension = 50, ReceivedOn = Street.Today };

    private Outcome Take(NewJobEntry entry) => new NewJobStore(_street.Database, Shops, _street.Clock).Add(Who.Shop, _street.Racket, entry);

    private ChangedJobEntry Changed => new() { Version = 1, MainsId = _street.Records.Kind(), MainsTension = 50, ReceivedOn = Street.Today };

    private Outcome Change(ChangedJobEntry entry) => new EditJobStore(_street.Database, Shops, _street.Clock).Change(Who.Shop, _job, entry);

    private Outcome Strung(StrungEntry entry) => Moves.MarkStrung(Who.Shop, _job, entry);
}
