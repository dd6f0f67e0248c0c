using Microsoft.Data.Sqlite;
using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Money;

public sealed class PaymentStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly Till _till;
    private readonly long _job;

    public PaymentStoreTests() => (_till, _job) = (new Till(_street), _street.Records.Job(_street.Racket));

    private Outcome Pay(PaymentEntry input) => _till.Payments.PayJob(Who.Shop, _job, input);

    private IReadOnlyList<PaymentStore.Row> Payments => _till.Payments.OfJob(Who.Shop, _job);

    public void Dispose()
    {
        _till.Balances();
        _street.Dispose();
    }

    [Fact]
    public void Job_is_paid_when_parts_of_several_kinds_come_to_its_price_and_not_before()
    {
        Pay(Till.Paid(1000));
        Assert.Equal((1000, 1450, null), (_till.Job(_job).LaidMinor, _till.Job(_job).OpenMinor, _till.Job(_job).PaidOn));
        Pay(Till.Paid(1449, PaymentMethod.Card));
        Assert.Null(_till.Job(_job).PaidOn);
        Pay(Till.Paid(1, PaymentMethod.Transfer));

        Assert.Equal((2450, 0, Street.Today), (_till.Job(_job).LaidMinor, _till.Job(_job).OpenMinor, _till.Job(_job).PaidOn));
        Assert.Equal([PaymentMethod.Cash, PaymentMethod.Card, PaymentMethod.Transfer], Payments.Select(p => p.Method));
    }

    [Fact]
    public void Rest_of_a_price_is_paid_by_one_press()
    {
        Pay(Till.Paid(1000));

        Pay(Till.Paid());

        Assert.Equal([1000, 1450], Payments.Select(p => p.AmountMinor));
        Assert.Equal(Street.Today, _till.Job(_job).PaidOn);
    }

    [Fact]
    public void Form_of_a_part_that_is_sent_twice_makes_one_payment()
    {
        var part = Till.Paid(1000);

        Pay(part);
        Pay(part);

        Assert.Equal(1000, _till.Job(_job).LaidMinor);
    }

    [Fact]
    public void Payment_belongs_to_the_payer_where_there_is_one()
    {
        _till.Academy();

        Pay(Till.Paid());

        Assert.Equal("Hall Academy", Assert.Single(Payments).FromName);
    }

    [Fact]
    public void What_cannot_be_paid_is_refused_and_nothing_is_written()
    {
        Assert.Equal(2450, _street.Refused<MoreThanOpen>(() => Pay(Till.Paid(2451))).OpenMinor);
        _street.Refused<AmountMissing>(() => Pay(Till.Paid(0)));
        _street.Refused<AmountMissing>(() => Pay(Till.Paid(-5)));
        _street.Refused<CreditTooSmall>(() => Pay(Till.Paid(method: null)));
        _street.Refused<PaidInFuture>(() => Pay(Till.Paid() with { PaidOn = Street.Today.AddDays(1) }));
        _street.Refused<PaidLongAgo>(() => Pay(Till.Paid() with { PaidOn = new(202, 11, 25) }));
        _street.Refused<FormKeyUnknown>(() => Pay(Till.Paid(100) with { FormKey = "made up" }));
        Pay(Till.Paid());
        _street.Refused<PaidAlready>(() => Pay(Till.Paid()));
    }

    [Fact]
    public void Job_without_a_price_can_be_marked_as_paid_but_not_in_parts()
    {
        _till.Charges.Save(Who.Shop, _job, _till.Sheet(_job).Version, []);
        _street.Refused<PriceMissing>(() => Pay(Till.Paid(500)));

        Pay(Till.Paid());

        Assert.Equal((null, Street.Today), (_till.Job(_job).PriceMinor, _till.Job(_job).PaidOn));
        Assert.Equal(0, Assert.Single(Payments).AmountMinor);
    }

    [Fact]
    public void Mistaken_payment_is_taken_back_by_a_counter_entry_and_both_stay()
    {
        Pay(Till.Paid(method: PaymentMethod.Card));

        Assert.Equal(new Outcome.Done(_job), _till.Payments.TakeBack(Who.Shop, Payments[0].Id));

        Assert.Equal([2450, -2450], Payments.Select(p => p.AmountMinor));
        Assert.Equal((true, Payments[0].Id, PaymentMethod.Card), (Payments[0].IsUndone, Payments[1].UndoesId, Payments[1].Method));
        Assert.Equal((0, null), (_till.Job(_job).LaidMinor, _till.Job(_job).PaidOn));
        Assert.Equal(0, _till.Payments.CreditFor(Who.Shop, _job));
        _street.Refused<TakenBackAlready>(() => _till.Payments.TakeBack(Who.Shop, Payments[0].Id));
        _street.Refused<TakenBackAlready>(() => _till.Payments.TakeBack(Who.Shop, Payments[1].Id));
    }

    [Fact]
    public void Price_that_falls_after_a_mistake_gives_credit_from_what_was_really_paid()
    {
        Pay(Till.Paid());
        _till.Payments.TakeBack(Who.Shop, Payments[0].Id);
        Pay(Till.Paid());
        _till.Payments.TakeBack(Who.Shop, Payments[2].Id);
        Pay(Till.Paid(2000));

        _till.Reprice(_job, 500);

        Assert.Equal((1500, 500), (_till.Payments.CreditFor(Who.Shop, _job), _till.Job(_job).LaidMinor));
    }

    [Fact]
    public void Job_paid_again_after_a_mistake_is_paid_on_the_later_day()
    {
        Pay(Till.Paid() with { PaidOn = new(2026, 11, 24) });
        _till.Payments.TakeBack(Who.Shop, Payments[0].Id);

        Pay(Till.Paid());

        Assert.Equal(Street.Today, _till.Job(_job).PaidOn);
    }

    [Theory]
    [InlineData("UPDATE payment SET amount_minor = 1")]
    [InlineData("UPDATE payment SET method = 'Card'")]
    [InlineData("DELETE FROM payment_share; DELETE FROM payment")]
    [InlineData("UPDATE payment_share SET amount_minor = 1")]
    public void Nobody_changes_a_payment_behind_the_shops_back(string sql)
    {
        Pay(Till.Paid());
        var before = _street.Database.Dump();

        Assert.Throws<SqliteException>(() => _street.Records.Change(sql));

        Assert.Equal(before, _street.Database.Dump());
    }

    [Fact]
    public void Cancelled_job_leaves_its_money_in_credit_for_the_next_one()
    {
        Pay(Till.Paid(2000));

        _till.Moves.Cancel(Who.Shop, _job);

        Assert.Equal((2000, 0), (_till.Payments.CreditFor(Who.Shop, _job), _till.Job(_job).LaidMinor));
        var next = _street.Records.Job(_street.Racket);
        _till.Reprice(next, 1500);
        Assert.IsType<Outcome.Done>(_till.Payments.PayJob(Who.Shop, next, Till.Paid(method: null)));
        Assert.Equal((Street.Today, 500), (_till.Job(next).PaidOn, _till.Payments.CreditFor(Who.Shop, next)));
    }

    [Fact]
    public void Racket_is_handed_out_and_paid_or_on_account_in_one_press()
    {
        _till.Moves.MarkStrung(Who.Shop, _job, new StrungEntry { StrungOn = Street.Today });
        Assert.Equal(2450, _street.Refused<MoreThanOpen>(() => _till.Moves.Collect(Who.Shop, _job, Out(Till.Paid(9999)))).OpenMinor);

        _till.Moves.Collect(Who.Shop, _job, Out(Till.Paid(1000)));
        Assert.Equal((JobState.Collected, 1450, null), (_till.Job(_job).State, _till.Job(_job).OpenMinor, _till.Job(_job).PaidOn));

        var second = _street.Records.Job(_street.Racket);
        _till.Moves.MarkStrung(Who.Shop, second, new StrungEntry { StrungOn = Street.Today });
        _till.Moves.Collect(Who.Shop, second, Out(null));
        Assert.Equal((JobState.Collected, 2450), (_till.Job(second).State, _till.Job(second).OpenMinor));
    }

    private static HandOutEntry Out(PaymentEntry? payment) => new() { CollectedOn = Street.Today, Payment = payment };

    [Fact]
    public void Ticket_with_a_payment_on_it_is_not_deleted_even_after_it_was_taken_back()
    {
        Pay(Till.Paid());
        _street.Refused<PaidFor>(() => new JobDeleteStore(_street.Database).Delete(Who.Shop, _job));
        _till.Payments.TakeBack(Who.Shop, Payments[0].Id);

        _street.Refused<PaymentsOnIt>(() => new JobDeleteStore(_street.Database).Delete(Who.Shop, _job));
    }
}
