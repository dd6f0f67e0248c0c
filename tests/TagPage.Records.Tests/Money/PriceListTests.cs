using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Core.Sports;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Money;

public sealed class PriceListTests : IDisposable
{
    private const long Heron = 1, Gut = 2, Reel = 3;

    private static readonly PriceList List = new()
    {
        LabourMinor = 1800,
        BadmintonMinor = 1500,
        TaxBp = 2000,
        Strings = new Dictionary<long, StringPrice> { [Heron] = new(901, null), [Gut] = new(3600, 350), [Reel] = new(null, 125) },
        Extras = [new ExtraPrice { Id = 7, Kind = ChargeKind.Grip, AmountMinor = 600 }, new ExtraPrice { Id = 8, Kind = ChargeKind.Extra, Name = "Stencil", AmountMinor = 200 }],
    };

    private readonly Street _street = new();

    public void Dispose() => _street.Dispose();

    private static PricedJob Job(long mains, long crosses, bool mainsByShop = true, bool crossesByShop = true, Sport sport = Sport.Tennis, params long[] extras) =>
        new() { Sport = sport, MainsId = mains, CrossesId = crosses, MainsByShop = mainsByShop, CrossesByShop = crossesByShop, Extras = extras };

    private static IEnumerable<(ChargeKind, long)> Lines(PricedJob job, long? agreed = null) => List.Lines(job, agreed).Select(line => (line.Kind, line.AmountMinor));

    [Fact]
    public void One_string_all_over_is_one_set() => Assert.Equal([(ChargeKind.Labour, 1800), (ChargeKind.Strings, 901)], Lines(Job(Heron, Heron)));

    [Fact]
    public void Hybrid_is_half_a_set_of_each_halves_up() =>
        Assert.Equal([(ChargeKind.Labour, 1800), (ChargeKind.Mains, 1800), (ChargeKind.Crosses, 451)], Lines(Job(Gut, Heron)));

    [Fact]
    public void String_without_a_set_price_goes_by_the_metre()
    {
        var line = List.Lines(Job(Reel, Reel), null)[1];
        Assert.Equal((ChargeKind.Strings, 1200, 125, 1500), (line.Kind, line.Centimetres, line.MetreMinor, line.AmountMinor));
        Assert.Equal([(ChargeKind.Labour, 1500), (ChargeKind.Mains, 625)], Lines(Job(Reel, Heron, crossesByShop: false, sport: Sport.Badminton)));
    }

    [Fact]
    public void Strings_that_the_client_brings_cost_labour_alone() =>
        Assert.Equal([(ChargeKind.Labour, 1800)], Lines(Job(Heron, Heron, mainsByShop: false, crossesByShop: false)));

    [Fact]
    public void Extras_that_were_ticked_come_on_top_and_unknown_ones_do_not()
    {
        var lines = List.Lines(Job(Heron, Heron, extras: [8, 99]), null);

        Assert.Equal((ChargeKind.Extra, "Stencil", 200), (lines[2].Kind, lines[2].Words, lines[2].AmountMinor));
        Assert.Equal(3, lines.Count);
        Assert.All(lines, line => Assert.Equal(2000, line.TaxBp));
    }

    [Fact]
    public void Price_agreed_is_kept_by_a_line_that_makes_up_the_difference()
    {
        Assert.Equal([(ChargeKind.Labour, 1800), (ChargeKind.Strings, 901), (ChargeKind.Adjustment, -201)], Lines(Job(Heron, Heron), 2500));
        Assert.Equal([(ChargeKind.Labour, 1800), (ChargeKind.Strings, 901)], Lines(Job(Heron, Heron), 2701));
        Assert.Equal([new ChargeLine { Kind = ChargeKind.Whole, AmountMinor = 2500 }], new PriceList().Lines(Job(Heron, Heron), 2500));
        Assert.Empty(new PriceList().Lines(Job(Heron, Heron), null));
    }

    [Fact]
    public void New_job_is_filled_in_from_the_list_and_keeps_its_price_when_the_list_changes()
    {
        var (till, kind) = (new Till(_street), _street.Records.Kind());
        var list = new PriceList { LabourMinor = 1800, TaxBp = 500, Strings = new Dictionary<long, StringPrice> { [kind] = new(1200, null) }, Extras = [new ExtraPrice { Kind = ChargeKind.Rush, AmountMinor = 500 }] };
        Assert.IsType<Outcome.Done>(till.Prices.Save(Who.Shop, list));
        var rush = till.Prices.Get().Extras[0].Id;

        var job = Assert.IsType<Outcome.Done>(till.News.Add(Who.Shop, _street.Racket, Order(kind) with { Extras = [rush] })).Id;
        till.Prices.Save(Who.Shop, till.Prices.Get() with { LabourMinor = 2000 });

        Assert.Equal(3500, till.Job(job).PriceMinor);
        Assert.Equal([ChargeKind.Labour, ChargeKind.Strings, ChargeKind.Rush], till.Sheet(job).Lines.Select(l => l.Kind));
        Assert.Equal(3, till.Charges.Changes(Who.Shop, job).Count);
        Assert.Equal(2000, till.Prices.Get().LabourMinor);
    }

    [Fact]
    public void Labour_alone_is_charged_for_the_clients_own_string()
    {
        var (till, kind) = (new Till(_street), _street.Records.Kind());
        till.Prices.Save(Who.Shop, new PriceList { LabourMinor = 1800, Strings = new Dictionary<long, StringPrice> { [kind] = new(1200, null) } });

        var job = Assert.IsType<Outcome.Done>(till.News.Add(Who.Shop, _street.Racket, Order(kind) with { MainsSuppliedBy = Supplier.Client })).Id;

        Assert.Equal(1800, till.Job(job).PriceMinor);
    }

    [Fact]
    public void List_saved_comes_back_and_an_outdated_form_is_refused()
    {
        var till = new Till(_street);
        var kind = _street.Records.Kind();
        var list = List with { Iban = "DE89370400440532013000", TaxNumber = "GB 123", AccountName = "Bench", Strings = new Dictionary<long, StringPrice> { [kind] = new(901, 80) }, Extras = [List.Extras[1] with { Id = 0 }] };

        till.Prices.Save(Who.Shop, list);
        var saved = till.Prices.Get();

        Assert.Equal((list.LabourMinor, list.BadmintonMinor, list.TaxBp, list.TaxNumber, list.Iban, list.AccountName), (saved.LabourMinor, saved.BadmintonMinor, saved.TaxBp, saved.TaxNumber, saved.Iban, saved.AccountName));
        Assert.Equal((list.Strings[kind], "Stencil"), (saved.Strings[kind], saved.Extras[0].Name));
        Assert.Equal(Outcome.Stale, till.Prices.Save(Who.Shop, saved with { Version = 9 }));
    }

    private static NewJobEntry Order(long kind) => new() { FormKey = FormKey.New(), MainsId = kind, MainsTension = 50, ReceivedOn = Street.Today };
}
