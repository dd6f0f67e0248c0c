using TagPage.Core.Money;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Money;

public sealed class ChargeStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly Till _till;
    private readonly long _job;

    public ChargeStoreTests() => (_till, _job) = (new Till(_street), _street.Records.Job(_street.Racket));

    private Outcome Save(params ChargeLine[] lines) => _till.Charges.Save(Who.Shop, _job, _till.Sheet(_job).Version, lines);

    public void Dispose()
    {
        _till.Balances();
        _street.Dispose();
    }

    [Fact]
    public void Price_is_the_sum_of_its_lines()
    {
        ChargeLine[] lines =
        [
            Till.Line(ChargeKind.Labour, 1800), Till.Line(ChargeKind.Mains, 900) with { Centimetres = 600, MetreMinor = 150, TaxBp = 2000 },
            Till.Line(ChargeKind.Extra, 350) with { Words = "stencil" }, Till.Line(ChargeKind.Adjustment, -50),
        ];

        Save(lines);

        Assert.Equal(lines, _till.Sheet(_job).Lines);
        Assert.Equal((3000, 3000), (_till.Sheet(_job).PriceMinor, _till.Job(_job).PriceMinor));
    }

    [Fact]
    public void Every_change_of_an_amount_stays_with_who_and_when()
    {
        Save(Till.Line(ChargeKind.Labour, 1800), Till.Line(ChargeKind.Grip, 600));
        _street.Time.Advance(TimeSpan.FromHours(2));
        Save(Till.Line(ChargeKind.Labour, 1900), Till.Line(ChargeKind.Grip, 600));

        var changes = _till.Charges.Changes(Who.Shop, _job);

        Assert.Equal(
            [(ChargeKind.Labour, 1800, 1900), (ChargeKind.Grip, null, 600), (ChargeKind.Labour, null, 1800), (ChargeKind.Whole, 2450, null)],
            changes.Select(c => (c.Kind, c.WasMinor, c.IsMinor)));
        Assert.All(changes, c => Assert.Equal("Shop", c.MadeBy));
        Assert.Equal(TimeSpan.FromHours(2), changes[0].MadeAt - changes[1].MadeAt);
    }

    [Fact]
    public void Saving_the_same_lines_again_changes_and_notes_nothing()
    {
        Save(Till.Line(ChargeKind.Labour, 1800));
        var before = _street.Database.Dump();

        Save(Till.Line(ChargeKind.Labour, 1800));

        Assert.Equal(before, _street.Database.Dump());
    }

    [Fact]
    public void Higher_price_of_a_paid_job_leaves_the_difference_owed_and_a_lower_one_in_credit()
    {
        _till.Payments.PayJob(Who.Shop, _job, Till.Paid());

        _till.Reprice(_job, 3000);
        Assert.Equal((550, null), (_till.Job(_job).OpenMinor, _till.Job(_job).PaidOn));
        _till.Reprice(_job, 2000);

        Assert.Equal((0, Street.Today), (_till.Job(_job).OpenMinor, _till.Job(_job).PaidOn));
        Assert.Equal(450, _till.Payments.CreditFor(Who.Shop, _job));
        Assert.Equal(2450, Assert.Single(_till.Payments.OfJob(Who.Shop, _job)).AmountMinor);
    }

    [Fact]
    public void Change_of_a_paid_amount_is_asked_about_and_one_of_an_unpaid_is_not()
    {
        Assert.Empty(_till.Sheet(_job).Oddities("Price", 3000));
        _till.Payments.PayJob(Who.Shop, _job, Till.Paid(1000));

        Assert.Empty(_till.Sheet(_job).Oddities("Price", 2450));
        Assert.Equal(new PaidPriceChanges("Price", _till.Job(_job).Ticket, 2450, 3000, 1000, "GBP"), Assert.Single(_till.Sheet(_job).Oddities("Price", 3000)));
    }

    [Fact]
    public void Change_of_an_amount_on_a_bill_is_asked_about_until_the_bill_is_cancelled()
    {
        var bills = new BillStore(_street.Database, new ShopStore(_street.Database), _street.Clock);
        var bill = Assert.IsType<Outcome.Done>(bills.Make(Who.Shop, Party.Client(_street.Odalys), Street.Today)).Id;

        var sheet = _till.Sheet(_street.Strung);
        Assert.Empty(sheet.Oddities("Price", sheet.PriceMinor));
        Assert.Equal(new BilledPriceChanges("Price", sheet.Ticket, "2026-0001"), Assert.Single(sheet.Oddities("Price", 3000)));
        Assert.Empty(_till.Sheet(_job).Oddities("Price", 3000));
        bills.Cancel(Who.Shop, bill);

        Assert.Empty(_till.Sheet(_street.Strung).Oddities("Price", 3000));
    }

    [Fact]
    public void Price_below_nothing_and_an_outdated_form_are_refused()
    {
        _street.Refused<PriceImpossible>(() => Save(Till.Line(ChargeKind.Labour, 100), Till.Line(ChargeKind.Adjustment, -101)));
        _street.Refused<PriceImpossible>(() => Save(Till.Line(ChargeKind.Labour, MinorUnits.Most), Till.Line(ChargeKind.Grip, 1)));
        _street.Refused<PriceImpossible>(() => Save(Till.Line(ChargeKind.Mains, MinorUnits.Most + 1), Till.Line(ChargeKind.Adjustment, -100)));
        Assert.Equal(Outcome.Stale, _till.Charges.Save(Who.Shop, _job, 77, []));
        Assert.IsType<Outcome.Absent>(_till.Charges.Save(Who.Shop, 99, 1, []));
    }

    [Fact]
    public void Price_typed_on_the_ticket_becomes_a_line_that_makes_up_the_difference()
    {
        Save(Till.Line(ChargeKind.Labour, 1800), Till.Line(ChargeKind.Strings, 900));

        Change(25.00m);
        Assert.Equal([(ChargeKind.Labour, 1800), (ChargeKind.Strings, 900), (ChargeKind.Adjustment, -200)], Lines);
        Change(27.00m);
        Assert.Equal([(ChargeKind.Labour, 1800), (ChargeKind.Strings, 900)], Lines);
        Change(null);
        Assert.Empty(Lines);
        Change(12.00m);
        Assert.Equal([(ChargeKind.Whole, 1200)], Lines);
    }

    private IEnumerable<(ChargeKind, long)> Lines => _till.Sheet(_job).Lines.Select(line => (line.Kind, line.AmountMinor));

    private void Change(decimal? price) => Assert.IsType<Outcome.Done>(new EditJobStore(_street.Database, new ShopStore(_street.Database), _street.Clock).Change(Who.Shop, _job,
        new ChangedJobEntry { Version = _till.Job(_job).Version, MainsId = _street.Records.Kind(), MainsTension = 50, ReceivedOn = Street.Today, Price = price }));
}
