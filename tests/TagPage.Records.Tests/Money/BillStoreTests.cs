using Microsoft.Data.Sqlite;
using TagPage.Core.Money;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Money;

public sealed class BillStoreTests : IDisposable
{
    private static readonly DateOnly October = new(2026, 10, 9), November = new(2026, 11, 30);

    private readonly Street _street = new();
    private readonly Till _till;

    public BillStoreTests() => _till = new Till(_street);

    private BillStore Bills => new(_street.Database, new ShopStore(_street.Database), _street.Clock);

    private Party Odalys => Party.Client(_street.Odalys);

    private BillRow Make(DateOnly month) => Bills.Get(Who.Shop, Assert.IsType<Outcome.Done>(Bills.Make(Who.Shop, Odalys, month)).Id)!;

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Bill_has_the_lines_of_what_was_strung_in_its_month_and_nothing_else()
    {
        var october = _street.Records.Job(_street.Racket, strungOn: new(2026, 10, 31));
        _street.Records.Job(_street.Racket);
        _till.Charges.Save(Who.Shop, _street.Strung, 1, [Till.Line(ChargeKind.Labour, 1800) with { TaxBp = 2000 }, Till.Line(ChargeKind.Grip, 600) with { TaxBp = 500, Words = "white" }]);
        _till.Payments.PayJob(Who.Shop, _street.Strung, Till.Paid(1000));

        var bill = Make(November);

        Assert.Equal(("2026-0001", "Odalys Ferran", "GBP", 2400, 1000, 1400), (bill.Name, bill.ToName, bill.Currency, bill.TotalMinor, bill.PaidMinor, bill.ToPayMinor));
        Assert.Equal((new DateOnly(2026, 11, 1), new DateOnly(2026, 11, 30), Street.Today), (bill.FromOn, bill.ToOn, bill.IssuedOn));
        Assert.Equal([("Pim Ferran", 1, ChargeKind.Labour, "", 1800), ("Pim Ferran", 1, ChargeKind.Grip, "white", 600)], bill.Lines.Select(l => (l.Whose, l.Racket!.Value, l.Kind, l.Words, l.AmountMinor)));
        // 18.00 with 20 % is exactly 3.00, 6.00 with 5 % is 0.2857…
        Assert.Equal([new TaxPart(2000, 1800, 300), new TaxPart(500, 600, 29)], bill.Taxes);
        Assert.Equal([(new DateOnly(2026, 10, 1), 1)], Bills.Months(Who.Shop, Odalys).Select(m => (m.FromOn, m.Jobs)));
        Assert.Equal(october, Make(October).Lines[0].JobId);
    }

    [Fact]
    public void Bill_names_the_tickets_whose_price_has_changed_since_and_one_written_anew_names_none()
    {
        var bill = Make(November);
        Assert.Null(bill.ChangedTickets);

        _till.Reprice(_street.Strung, 3000);

        Assert.Equal($"{_till.Job(_street.Strung).Ticket}", Bills.Get(Who.Shop, bill.Id)!.ChangedTickets);
        Bills.Cancel(Who.Shop, bill.Id);
        Make(November);
        Assert.All(Bills.Of(Who.Shop, Odalys), b => Assert.Null(b.ChangedTickets));
    }

    [Fact]
    public void Nothing_is_billed_twice()
    {
        Make(November);

        _street.Refused<NothingToBill>(() => Bills.Make(Who.Shop, Odalys, November));
        _street.Refused<NothingToBill>(() => Bills.Make(Who.Shop, Odalys, new DateOnly(9999, 12, 1)));
        Assert.IsType<Outcome.Absent>(Bills.Make(Who.Shop, Party.Payer(99), November));
    }

    [Fact]
    public void Numbers_have_no_gaps_however_many_write_at_once_and_begin_anew_with_the_year()
    {
        for (var month = 1; month <= 10; month++)
            _street.Records.Job(_street.Racket, strungOn: new(2026, month, 15));

        var made = Enumerable.Range(1, 11).SelectMany(month => Enumerable.Repeat(month, 3)).AsParallel().WithDegreeOfParallelism(4)
            .Select(month => Bills.Make(Who.Shop, Odalys, new(2026, month, 1))).OfType<Outcome.Done>().Count();

        Assert.Equal(11, made);
        Assert.Equal(Enumerable.Range(1, 11).Reverse(), Bills.Of(Who.Shop, Odalys).Select(b => b.Number));
        _street.Time.Advance(TimeSpan.FromDays(60));
        Assert.Equal("2027-0001", Bills.Get(Who.Shop, Assert.IsType<Outcome.Done>(Bills.Cancel(Who.Shop, 3)).Id)!.Name);
    }

    [Fact]
    public void Mistaken_bill_is_cancelled_by_another_and_its_rackets_can_be_billed_again()
    {
        var bill = Make(November);

        var counter = Bills.Get(Who.Shop, Assert.IsType<Outcome.Done>(Bills.Cancel(Who.Shop, bill.Id)).Id)!;

        Assert.Equal(("2026-0002", bill.Id, -bill.TotalMinor, 1), (counter.Name, counter.CancelsId, counter.TotalMinor, counter.CancelsNumber));
        Assert.Equal(counter.Id, Bills.Get(Who.Shop, bill.Id)!.CancelledById);
        _street.Refused<CancelledAlready>(() => Bills.Cancel(Who.Shop, bill.Id));
        _street.Refused<CancelledAlready>(() => Bills.Cancel(Who.Shop, counter.Id));
        Assert.Equal("2026-0003", Make(November).Name);
    }

    [Fact]
    public void Bill_stays_as_it_was_when_prices_and_the_shop_change()
    {
        var bill = Make(November);

        _till.Reprice(_street.Strung, 9900);
        _street.Records.Change("UPDATE shop SET name = 'Quayside Rackets'");

        var later = Bills.Get(Who.Shop, bill.Id)!;
        Assert.Equal((2450, "Ferrygate Racket Bench"), (later.TotalMinor, later.Sender.Name));
    }

    [Fact]
    public void Bill_is_written_in_the_clients_language_of_its_day_and_a_payers_in_the_shops()
    {
        _street.Records.Change("UPDATE shop SET language = 'fr'; UPDATE client SET language = 'de'");
        var bill = Make(November);
        _street.Records.Change("UPDATE client SET language = 'it'");

        var counter = Assert.IsType<Outcome.Done>(Bills.Cancel(Who.Shop, bill.Id)).Id;

        Assert.Equal(["de", "de"], new[] { bill.Id, counter }.Select(id => Bills.Get(Who.Shop, id)!.Language));
        var academy = _till.Academy();
        Assert.Equal("fr", Bills.Get(Who.Shop, Assert.IsType<Outcome.Done>(Bills.Make(Who.Shop, Party.Payer(academy), November)).Id)!.Language);
    }

    [Theory]
    [InlineData("UPDATE bill SET number = 7")]
    [InlineData("UPDATE bill SET language = 'fr'")]
    [InlineData("UPDATE bill_line SET amount_minor = 1")]
    [InlineData("DELETE FROM bill_line")]
    [InlineData("DELETE FROM bill")]
    public void Nobody_changes_a_bill_behind_the_shops_back(string sql)
    {
        Make(November);
        var before = _street.Database.Dump();

        Assert.Throws<SqliteException>(() => _street.Records.Change(sql));

        Assert.Equal(before, _street.Database.Dump());
    }
}
