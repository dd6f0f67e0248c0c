using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Prepaid;
using TagPage.Records.Privacy;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;
using TagPage.Records.Tests.Money;

namespace TagPage.Records.Tests.Prepaid;

/// <summary>Odalys bought two restrings, labour only, for 32.00; a ticket of hers costs 18.00 for labour and 9.00 for a set.</summary>
public sealed class PrepaidStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly Till _till;
    private readonly long _job;

    public PrepaidStoreTests()
    {
        _till = new Till(_street);
        _till.Prices.Save(Who.Shop, new PriceList { LabourMinor = 1800, TaxBp = 2000, Strings = new Dictionary<long, StringPrice> { [_street.Records.Kind()] = new(900, null) } });
        Sell(Two);
        _job = TakeIn();
    }

    private PrepaidStore Store => new(_street.Database, _street.Clock);

    private Party Party => Party.Client(_street.Odalys);

    private static PrepaidEntry Two => new() { FormKey = FormKey.New(), BoughtOn = Street.Today, Restrings = 2, AmountMinor = 3200, Method = PaymentMethod.Card };

    private int Left => Store.Of(Who.Shop, Party).Sum(row => row.Left);

    private void Sell(PrepaidEntry entry) => Assert.IsType<Outcome.Done>(Store.Sell(Who.Shop, Party, entry));

    private long TakeIn(Supplier from = Supplier.Shop) => Assert.IsType<Outcome.Done>(_till.News.Add(Who.Shop, _street.Racket,
        new NewJobEntry { FormKey = FormKey.New(), MainsId = _street.Records.Kind(), MainsSuppliedBy = from, MainsTension = 50, ReceivedOn = Street.Today })).Id;

    private long Ready(Supplier from = Supplier.Shop)
    {
        var job = TakeIn(from);
        _till.Moves.MarkStrung(Who.Shop, job, new StrungEntry { StrungOn = Street.Today });
        return job;
    }

    public void Dispose() => _street.Dispose();

    [Fact]
    public void One_takes_the_labour_off_and_the_strings_are_still_to_be_paid()
    {
        Assert.Equal(new PrepaidStore.OfTicket(2, 1800, false), Store.ForJob(Who.Shop, _job));

        _street.Check(true, () => Store.Use(Who.Bench(null), _job));

        Assert.Equal((900L, 900L, null, 1), (_till.Job(_job).PriceMinor!.Value, _till.Job(_job).OpenMinor!.Value, _till.Job(_job).PaidOn, Left));
        Assert.Equal(new PrepaidStore.OfTicket(1, 1800, true), Store.ForJob(Who.Shop, _job));
        Assert.Equal(2000, Assert.Single(_till.Sheet(_job).Lines, line => line.Kind == ChargeKind.Prepaid).TaxBp);
    }

    [Fact]
    public void Ticket_with_nothing_left_to_pay_is_paid()
    {
        var own = TakeIn(Supplier.Client);
        Store.Use(Who.Shop, own);

        Assert.Equal((0L, Street.Today), (_till.Job(own).PriceMinor!.Value, _till.Job(own).PaidOn!.Value));
    }

    [Fact]
    public void One_that_covers_strings_too_takes_off_both()
    {
        Sell(Two with { Covers = PrepaidCover.LabourAndStrings, BoughtOn = Street.Today.AddDays(-9) });

        Store.Use(Who.Shop, _job);

        Assert.Equal(0, _till.Job(_job).PriceMinor);
    }

    [Fact]
    public void Extras_are_never_covered_and_the_price_never_falls_below_zero()
    {
        _till.Charges.Save(Who.Shop, _job, _till.Sheet(_job).Version, [Till.Line(ChargeKind.Labour, 1800), Till.Line(ChargeKind.Rush, 500), Till.Line(ChargeKind.Adjustment, -1000)]);

        Store.Use(Who.Shop, _job);

        Assert.Equal(0, _till.Job(_job).PriceMinor);
        Assert.Equal(1300, Store.ForJob(Who.Shop, _job)!.CoveredMinor);
    }

    [Fact]
    public void None_is_used_that_was_not_bought()
    {
        Store.Use(Who.Shop, _job);
        Store.Use(Who.Shop, TakeIn());

        var third = TakeIn();
        _street.Refused<NoPrepaidLeft>(() => Store.Use(Who.Shop, third));
        Assert.Equal(0, Left);
        Assert.Throws<Microsoft.Data.Sqlite.SqliteException>(() =>
            _street.Records.Change("INSERT INTO prepaid_use (prepaid_id, ticket, used_on, made_at, made_by) VALUES (1, 9, '2026-11-25', '2026-11-25T09:00:00.000Z', 'Shop')"));
    }

    [Fact]
    public void Of_two_tablets_one_uses_it_and_the_other_is_told()
    {
        var outcomes = new Outcome[2];
        Parallel.For(0, 2, tablet => outcomes[tablet] = Store.Use(Who.Shop, _job));

        Assert.Single(outcomes, new Outcome.Done(_job));
        Assert.Single(outcomes, new Outcome.Refused(new PrepaidOnItAlready(_till.Job(_job).Ticket)));
        Assert.Equal(1, Left);
    }

    [Fact]
    public void Hand_out_taken_back_gives_it_back()
    {
        var job = Ready(Supplier.Client);
        Store.Use(Who.Shop, job);
        _till.Moves.Collect(Who.Shop, job, new HandOutEntry { CollectedOn = Street.Today });

        new BackStore(_street.Database, _street.Time).Back(Who.Shop, job, JobState.Collected);

        Assert.Equal((2, 1800L, null), (Left, _till.Job(job).PriceMinor!.Value, _till.Job(job).PaidOn));
    }

    [Fact]
    public void Cancelled_ticket_gives_it_back_and_so_does_one_press()
    {
        Store.Use(Who.Shop, _job);
        _till.Moves.Cancel(Who.Shop, _job);
        Assert.Equal(2, Left);

        var other = TakeIn();
        Store.Use(Who.Shop, other);
        _street.Check(true, () => Store.GiveBack(Who.Shop, other));
        Assert.Equal((2, 2700L), (Left, _till.Job(other).PriceMinor!.Value));
        _street.Refused<NoPrepaidOnIt>(() => Store.GiveBack(Who.Shop, other));
    }

    [Fact]
    public void Money_of_the_sale_is_income_and_no_credit()
    {
        Assert.Equal(0, _till.Payments.CreditFor(Who.Shop, _job));
        Assert.DoesNotContain(new OwedStore(_street.Database).List(Who.Shop), row => row.CreditMinor > 0);
        var month = new FigureStore(_street.Database).Year(Who.Shop, 2026)[10];

        Assert.Equal(3200, month.IncomeMinor);
        Assert.Contains(new FigureStore(_street.Database).Charges(Who.Shop, 2026), charged => charged is { Ticket: null, GrossMinor: 3200, TaxBp: 2000 });
    }

    [Fact]
    public void Sale_by_mistake_is_taken_back_with_its_payment_unless_one_is_used()
    {
        var payment = Store.Of(Who.Shop, Party)[0].PaymentId;
        Store.Use(Who.Shop, _job);
        Assert.Equal(1, _street.Refused<PrepaidUsed>(() => _till.Payments.TakeBack(Who.Shop, payment)).Count);

        Store.GiveBack(Who.Shop, _job);
        Assert.IsType<Outcome.Done>(_till.Payments.TakeBack(Who.Shop, payment));
        Assert.Equal(0, Left);
        _street.Refused<NoPrepaidLeft>(() => Store.Use(Who.Shop, _job));
        Assert.Equal(0, new FigureStore(_street.Database).Charges(Who.Shop, 2026).Where(charged => charged.Ticket is null).Sum(charged => charged.GrossMinor));
    }

    [Fact]
    public void Price_that_is_changed_keeps_what_was_taken_off_and_the_same_again_does_not()
    {
        Store.Use(Who.Shop, _job);
        _till.Charges.Save(Who.Shop, _job, _till.Sheet(_job).Version, [Till.Line(ChargeKind.Labour, 2000), Till.Line(ChargeKind.Prepaid, -100)]);
        Assert.Equal(200, _till.Job(_job).PriceMinor);

        _street.Database.Write(c =>
        {
            ChargeLineStore.Copy(c, _job, _street.Strung, Who.Shop, _street.Clock.Now);
            return 0;
        });
        Assert.DoesNotContain(_till.Sheet(_street.Strung).Lines, line => line.Kind == ChargeKind.Prepaid);
    }

    [Fact]
    public void What_does_not_fit_is_refused_and_a_form_sent_twice_sells_once()
    {
        _street.Refused<BoughtInFuture>(() => Store.Sell(Who.Shop, Party, Two with { BoughtOn = Street.Today.AddDays(1) }));
        _street.Refused<BoughtLongAgo>(() => Store.Sell(Who.Shop, Party, Two with { BoughtOn = new(1926, 11, 25) }));
        _street.Refused<RestringsUnlikely>(() => Store.Sell(Who.Shop, Party, Two with { Restrings = 0 }));
        _street.Refused<RestringsUnlikely>(() => Store.Sell(Who.Shop, Party, Two with { Restrings = 101 }));
        _street.Refused<PrepaidAmountMissing>(() => Store.Sell(Who.Shop, Party, Two with { AmountMinor = 0 }));
        var twice = Two;
        Assert.Equal(Store.Sell(Who.Shop, Party, twice), Store.Sell(Who.Shop, Party, twice));
        Assert.Equal(4, Left);
    }

    [Fact]
    public void Sale_has_a_bill_of_its_own_that_is_paid_and_can_be_cancelled()
    {
        _street.Records.Change("UPDATE client SET language = 'de'");
        var bill = Bills.Get(Who.Shop, Assert.IsType<Outcome.Done>(Bills.MakePrepaid(Who.Shop, Party, 1)).Id)!;

        Assert.Equal(("2026-0001", "Odalys Ferran", "de", 3200L, 3200L, 0L), (bill.Name, bill.ToName, bill.Language, bill.TotalMinor, bill.PaidMinor, bill.ToPayMinor));
        Assert.Equal((Street.Today, Street.Today), (bill.FromOn, bill.ToOn));
        var line = Assert.Single(bill.Lines);
        Assert.Equal((1L, 2, PrepaidCover.Labour, null, 2000), (line.PrepaidId!.Value, line.Restrings!.Value, line.Covers!.Value, line.Ticket, line.TaxBp));
        // 32.00 with 20 % is 5.3333…
        Assert.Equal([new TaxPart(2000, 3200, 533)], bill.Taxes);
        Assert.True(Store.Of(Who.Shop, Party)[0].IsBilled);
        _street.Refused<NothingToBill>(() => Bills.MakePrepaid(Who.Shop, Party, 1));

        var counter = Bills.Get(Who.Shop, Assert.IsType<Outcome.Done>(Bills.Cancel(Who.Shop, bill.Id)).Id)!;
        Assert.Equal((-3200L, -3200L, 2), (counter.TotalMinor, counter.PaidMinor, counter.Lines[0].Restrings!.Value));
        Assert.False(Store.Of(Who.Shop, Party)[0].IsBilled);
        Assert.IsType<Outcome.Done>(Bills.MakePrepaid(Who.Shop, Party, 1));
    }

    [Fact]
    public void Bill_says_that_the_payment_of_its_sale_was_taken_back_until_it_is_cancelled()
    {
        var bill = Assert.IsType<Outcome.Done>(Bills.MakePrepaid(Who.Shop, Party, 1)).Id;
        Assert.False(Bills.Get(Who.Shop, bill)!.IsSaleUndone);

        _till.Payments.TakeBack(Who.Shop, Store.Of(Who.Shop, Party)[0].PaymentId);

        Assert.True(Bills.Get(Who.Shop, bill)!.IsSaleUndone);
        Bills.Cancel(Who.Shop, bill);
        Assert.All(Bills.Of(Who.Shop, Party), b => Assert.False(b.IsSaleUndone));
    }

    [Fact]
    public void Nothing_is_billed_of_a_sale_that_was_taken_back_or_is_somebody_elses()
    {
        Assert.IsType<Outcome.Absent>(Bills.MakePrepaid(Who.Shop, Party.Client(_street.Ewan), 1));
        Assert.IsType<Outcome.Absent>(Bills.MakePrepaid(Who.Shop, Party, 99));
        Assert.Equal((2, "Odalys Ferran", PaymentMethod.Card), Store.Get(Who.Shop, 1) is { } sale ? (sale.Restrings, sale.Name, sale.Method) : default);

        _till.Payments.TakeBack(Who.Shop, Store.Of(Who.Shop, Party)[0].PaymentId);

        _street.Refused<NothingToBill>(() => Bills.MakePrepaid(Who.Shop, Party, 1));
        Assert.Null(Store.Get(Who.Shop, 1));
        Assert.Equal(0, _street.Records.Count("bill"));
    }

    [Fact]
    public void Month_bills_no_sale_and_a_sale_no_month()
    {
        Bills.MakePrepaid(Who.Shop, Party, 1);

        var month = Bills.Get(Who.Shop, Assert.IsType<Outcome.Done>(Bills.Make(Who.Shop, Party, Street.Today)).Id)!;

        Assert.All(month.Lines, line => Assert.Null(line.PrepaidId));
    }

    [Fact]
    public void What_would_be_lost_with_the_data_counts_a_payers_only_where_nobody_else_is_left()
    {
        Store.Use(Who.Shop, _job);
        Assert.Equal((1, 1, null), (Lost(Who.Shop), Lost(Who.Client(_street.Odalys)), Lost(Who.Client(_street.Ewan))));

        var academy = _till.Academy();
        Assert.IsType<Outcome.Done>(Store.Sell(Who.Shop, Party.Payer(academy), Two));
        Assert.Equal((3, 1), (Lost(Who.Shop), Lost(Who.Client(_street.Odalys))));
        _street.Records.Change("UPDATE client SET payer_id = @academy", new { academy });
        Assert.Equal(1, Lost(Who.Shop));

        int? Lost(Who who) => Store.LostWith(who, _street.Odalys);
    }

    [Fact]
    public void Bill_of_a_sale_keeps_number_and_amounts_when_the_data_is_deleted()
    {
        Bills.MakePrepaid(Who.Shop, Party, 1);

        _street.Database.Write(c => EraseStore.EraseRecords(c, _street.Odalys, _street.Clock.Now));

        var bill = Bills.Get(Who.Shop, 1)!;
        Assert.Equal(("", null, 3200L, 2), (bill.ToName, bill.ClientId, bill.TotalMinor, bill.Lines[0].Restrings!.Value));
        Assert.Null(Store.Get(Who.Shop, 1));
    }

    private BillStore Bills => new(_street.Database, new ShopStore(_street.Database), _street.Clock);

    [Fact]
    public void Nothing_of_a_sale_is_ever_edited_or_deleted()
    {
        Assert.Throws<Microsoft.Data.Sqlite.SqliteException>(() => _street.Records.Change("UPDATE prepaid SET restrings = 3"));
        Assert.Throws<Microsoft.Data.Sqlite.SqliteException>(() => _street.Records.Change("DELETE FROM prepaid"));
    }

    [Fact]
    public void Client_reads_how_many_are_left_and_one_whose_payer_pays_does_not()
    {
        Assert.Equal(2, Store.LeftOfClient(Who.Client(_street.Odalys)));
        Assert.Null(Store.LeftOfClient(Who.Client(_street.Ewan)));
        _till.Academy();
        Assert.Null(Store.LeftOfClient(Who.Client(_street.Odalys)));
    }

    [Fact]
    public void Of_a_client_whose_data_was_deleted_the_sale_stays_without_the_person()
    {
        Store.Use(Who.Shop, _job);
        var before = new FigureStore(_street.Database).Year(Who.Shop, 2026)[10];

        _street.Database.Write(c => EraseStore.EraseRecords(c, _street.Odalys, _street.Clock.Now));

        Assert.Equal(before, new FigureStore(_street.Database).Year(Who.Shop, 2026)[10]);
        Assert.Equal("|1", _street.Records.Text("SELECT COALESCE(client_id, '') || '|' || (SELECT COUNT(*) FROM prepaid_use WHERE job_id IS NULL) FROM prepaid"));
    }

    [Fact]
    public void Program_comes_to_what_the_manual_worked_out_by_hand()
    {
        using var other = new PrepaidMonth();
        other.Check();
    }
}
