using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Jobs;

/// <summary>Three rackets of Odalys's household are ready: two at 24.50, one without a price.</summary>
public sealed class PickUpStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly long _first, _second, _priceless;
    private readonly Party _odalys;

    public PickUpStoreTests()
    {
        _odalys = Party.Client(_street.Odalys);
        _first = Ready(_street.Racket);
        _second = Ready(_street.Records.Racket(_street.Pim, number: 2));
        _priceless = Ready(_street.Records.Racket(_street.Pim, number: 3));
        _street.Records.Change("DELETE FROM charge WHERE job_id = @_priceless; UPDATE job SET price_minor = NULL WHERE id = @_priceless", new { _priceless });
    }

    private PickUpStore Store => new(_street.Database, _street.Clock);

    private PaymentStore Payments => new(_street.Database, _street.Clock);

    private JobRow Job(long id) => new JobStore(_street.Database).Get(Who.Shop, id)!;

    private long Ready(long racket)
    {
        var job = _street.Records.Job(racket);
        new MoveStore(_street.Database, _street.Clock).MarkStrung(Who.Shop, job, new StrungEntry { StrungOn = Street.Today });
        return job;
    }

    private static PickUpEntry Entry(PaymentEntry? payment, params long[] jobs) =>
        new() { FormKey = new string('k', FormKeys.KeyLength), CollectedOn = Street.Today, Jobs = jobs, Payment = payment };

    private static PaymentEntry Cash(long? amount = null) => new() { PaidOn = Street.Today, Method = PaymentMethod.Cash, AmountMinor = amount };

    public void Dispose() => _street.Dispose();

    [Fact]
    public void All_three_are_handed_out_and_one_payment_pays_for_them()
    {
        Assert.Equal(new Outcome.Done(_first), Store.Collect(Who.Shop, _odalys, Entry(Cash(), _first, _second, _priceless)));

        Assert.All([Job(_first), Job(_second), Job(_priceless)], job => Assert.Equal((JobState.Collected, Street.Today, Street.Today), (job.State, job.CollectedOn!.Value, job.PaidOn!.Value)));
        var payment = Assert.Single(Payments.OfParty(Who.Shop, _odalys));
        Assert.Equal((4900L, 4900L, 3), (payment.AmountMinor, payment.LaidMinor, payment.Jobs));
        Assert.Equal([2450L, 2450L], [Job(_first).LaidMinor, Job(_second).LaidMinor]);
    }

    [Fact]
    public void Second_press_takes_no_second_payment()
    {
        var entry = Entry(Cash(), _first, _second);
        Store.Collect(Who.Shop, _odalys, entry);

        Assert.Equal(new Outcome.Done(_first), Store.Collect(Who.Shop, _odalys, entry));
        Assert.Single(Payments.OfParty(Who.Shop, _odalys));
    }

    [Fact]
    public void Part_payment_pays_the_first_whole_and_the_second_in_part()
    {
        Store.Collect(Who.Shop, _odalys, Entry(Cash(3000), _first, _second));

        Assert.Equal((Street.Today, null, 1900L), (Job(_first).PaidOn, Job(_second).PaidOn, Job(_second).OpenMinor!.Value));
    }

    [Fact]
    public void More_than_is_open_is_refused_and_nothing_leaves_the_shop()
    {
        Assert.Equal(4900, _street.Refused<MoreThanOpen>(() => Store.Collect(Who.Shop, _odalys, Entry(Cash(4901), _first, _second))).OpenMinor);
    }

    [Fact]
    public void One_that_somebody_handed_out_meanwhile_keeps_all_of_them_and_the_money_back()
    {
        new MoveStore(_street.Database, _street.Clock).Collect(Who.Shop, _second, new HandOutEntry { CollectedOn = Street.Today });

        var why = _street.Refused<JobMovedOn>(() => Store.Collect(Who.Shop, _odalys, Entry(Cash(), _first, _second)));

        Assert.Equal((PickUpEntry.Place(_second), JobState.Collected), (why.Field, why.State));
    }

    [Fact]
    public void On_account_they_leave_unpaid()
    {
        Store.Collect(Who.Shop, _odalys, Entry(null, _first, _second));

        Assert.Equal((JobState.Collected, null, 2450L), (Job(_first).State, Job(_first).PaidOn, Job(_first).OpenMinor!.Value));
        Assert.Empty(Payments.OfParty(Who.Shop, _odalys));
    }

    [Fact]
    public void Credit_pays_for_what_it_covers_and_for_nothing_where_it_does_not()
    {
        _street.Records.Change("UPDATE job SET paid_on = '2026-11-02' WHERE id = @Strung", new { _street.Strung });
        Payments.PayAccount(Who.Shop, _odalys, new PaymentEntry { FormKey = new string('a', FormKeys.KeyLength), PaidOn = Street.Today, Method = PaymentMethod.Transfer, AmountMinor = 5900 });
        var (dear, cheap) = (Ready(_street.Records.Racket(_street.Pim, number: 4)), Ready(_street.Records.Racket(_street.Pim, number: 5)));
        _street.Records.Change("UPDATE charge SET amount_minor = 800 WHERE job_id = @cheap; UPDATE job SET price_minor = 800 WHERE id = @cheap", new { cheap });
        Assert.Equal(1000, Store.Credit(Who.Shop, _odalys));

        _street.Refused<CreditTooSmall>(() => Store.Collect(Who.Shop, _odalys, Entry(new PaymentEntry { PaidOn = Street.Today }, dear, cheap)));
        Store.Collect(Who.Shop, _odalys, Entry(new PaymentEntry { PaidOn = Street.Today }, cheap));

        Assert.Equal((JobState.Collected, Street.Today), (Job(cheap).State, Job(cheap).PaidOn!.Value));
        Assert.Equal(200, Store.Credit(Who.Shop, _odalys));
    }

    [Fact]
    public void Payers_pick_up_is_paid_by_the_payer()
    {
        _street.Records.Change("INSERT INTO payer (name) VALUES ('Eastmere Academy'); UPDATE client SET payer_id = 1 WHERE id = @Odalys", new { _street.Odalys });

        Store.Collect(Who.Shop, Party.Payer(1), Entry(Cash(), _first, _second));

        Assert.Equal(4900, Assert.Single(Payments.OfParty(Who.Shop, Party.Payer(1))).AmountMinor);
        Assert.Empty(Payments.OfParty(Who.Shop, _odalys));
    }

    [Fact]
    public void Another_households_racket_is_not_there()
    {
        var before = _street.Database.Dump();

        Assert.IsType<Outcome.Absent>(Store.Collect(Who.Shop, Party.Client(_street.Ewan), Entry(Cash(), _first)));

        Assert.Equal(before, _street.Database.Dump());
    }
}
