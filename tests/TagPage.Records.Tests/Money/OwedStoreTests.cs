using TagPage.Core.Money;
using TagPage.Records.Money;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Money;

public sealed class OwedStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly Till _till;
    private readonly long _job;

    public OwedStoreTests() => (_till, _job) = (new Till(_street), _street.Records.Job(_street.Racket));

    private OwedStore Owed => new(_street.Database);

    private Party Odalys => Party.Client(_street.Odalys);

    private long Account(PaymentEntry input) => Assert.IsType<Outcome.Done>(_till.Payments.PayAccount(Who.Shop, Odalys, input)).Id;

    public void Dispose()
    {
        _till.Balances();
        _street.Dispose();
    }

    [Fact]
    public void What_is_owed_stands_with_its_amount_and_since_the_oldest_of_it()
    {
        _till.Payments.PayJob(Who.Shop, _job, Till.Paid(1000));

        var row = Assert.Single(Owed.List(Who.Shop));

        Assert.Equal(("Odalys Ferran", 2, 2450 + 1450, new DateOnly(2026, 11, 1), 0), (row.Name, row.Jobs, row.OwedMinor, row.Since!.Value, row.CreditMinor));
        Assert.Equal([2450, 1450], Owed.Get(Who.Shop, Odalys)!.Jobs.Select(j => j.OpenMinor!.Value));
    }

    [Fact]
    public void Payer_owes_what_their_clients_would()
    {
        var academy = _till.Academy();

        var row = Assert.Single(Owed.List(Who.Shop));

        Assert.Equal(("Hall Academy", null, academy, 4900), (row.Name, row.ClientId, row.PayerId, row.OwedMinor));
        Assert.Empty(Owed.Get(Who.Shop, Odalys)!.Jobs);
        Assert.Equal(4900, Owed.Get(Who.Shop, Party.Payer(academy))!.OwedMinor);
    }

    [Fact]
    public void Paid_cancelled_and_unpriced_jobs_owe_nothing()
    {
        _till.Payments.PayJob(Who.Shop, _street.Strung, Till.Paid());
        _till.Moves.Cancel(Who.Shop, _job);
        _till.Charges.Save(Who.Shop, _street.Records.Job(_street.Racket), 1, []);

        Assert.Empty(Owed.List(Who.Shop));
    }

    [Fact]
    public void Payment_on_account_is_laid_against_the_oldest_first_and_the_rest_stays_in_credit()
    {
        Assert.Equal(3000, Account(Till.Paid(3000)));
        Assert.Equal((2450, 550), (_till.Job(_street.Strung).LaidMinor, _till.Job(_job).LaidMinor));

        Assert.Equal(1900, Account(Till.Paid(2500)));

        Assert.Equal((Street.Today, Street.Today), (_till.Job(_street.Strung).PaidOn, _till.Job(_job).PaidOn));
        Assert.Equal(600, Assert.Single(Owed.List(Who.Shop)).CreditMinor);
    }

    [Fact]
    public void Credit_is_laid_against_what_came_later_by_one_press()
    {
        Account(Till.Paid(6000));
        _street.Refused<NothingToLay>(() => _till.Payments.PayAccount(Who.Shop, Odalys, Till.Paid(method: null)));
        var later = _street.Records.Job(_street.Racket);

        Assert.Equal(1100, Account(Till.Paid(method: null)));

        Assert.Equal((1100, 1350), (_till.Job(later).LaidMinor, _till.Job(later).OpenMinor));
    }

    [Fact]
    public void Payment_for_several_tickets_taken_back_opens_all_of_them_again()
    {
        Account(Till.Paid(6000));

        _till.Payments.TakeBack(Who.Shop, _till.Payments.OfParty(Who.Shop, Odalys)[0].Id);

        Assert.Equal((2450, 2450), (_till.Job(_street.Strung).OpenMinor, _till.Job(_job).OpenMinor));
        Assert.Equal(0, Assert.Single(Owed.List(Who.Shop)).CreditMinor);
        Assert.Equal(0, long.Parse(_street.Records.Text("SELECT CAST(SUM(amount_minor) AS TEXT) FROM payment"), System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Account_of_nobody_takes_no_payment_and_one_without_an_amount_is_refused()
    {
        Assert.IsType<Outcome.Absent>(_till.Payments.PayAccount(Who.Shop, Party.Payer(99), Till.Paid(100)));
        _street.Refused<AmountMissing>(() => _till.Payments.PayAccount(Who.Shop, Odalys, Till.Paid()));
    }

    /// <summary>Whatever is done in whatever order: no money appears, and none is lost.</summary>
    [Fact]
    public void Sums_hold_after_hundreds_of_random_moves()
    {
        var random = new Random(69);
        List<long> jobs = [_street.Strung, _job];
        for (var i = 0; i < 400; i++)
        {
            var job = jobs[random.Next(jobs.Count)];
            switch (random.Next(7))
            {
                case 0:
                    jobs.Add(_street.Records.Job(_street.Racket));
                    break;
                case 1:
                    _till.Charges.Save(Who.Shop, job, _till.Sheet(job).Version, [Till.Line(ChargeKind.Labour, random.Next(0, 5000))]);
                    break;
                case 2:
                    _till.Payments.PayJob(Who.Shop, job, Till.Paid(random.Next(1, 3000)));
                    break;
                case 3:
                    _till.Payments.PayAccount(Who.Shop, Odalys, Till.Paid(random.Next(1, 4000)));
                    break;
                case 4:
                    _till.Payments.PayAccount(Who.Shop, Odalys, Till.Paid(method: null));
                    break;
                case 5 when _till.Payments.OfParty(Who.Shop, Odalys) is { Count: > 0 } all:
                    _till.Payments.TakeBack(Who.Shop, all[random.Next(all.Count)].Id);
                    break;
                default:
                    _till.Moves.Cancel(Who.Shop, job);
                    break;
            }
        }

        var paid = Sum("SELECT COALESCE(SUM(amount_minor), 0) FROM payment");
        var laid = Sum("SELECT COALESCE(SUM(amount_minor), 0) FROM payment_share");
        Assert.Equal(paid, laid + (Owed.List(Who.Shop).SingleOrDefault()?.CreditMinor ?? 0));
        Assert.Equal(0, _street.Records.Count("(SELECT j.id FROM job j JOIN payment_share s ON s.job_id = j.id GROUP BY j.id HAVING SUM(s.amount_minor) NOT BETWEEN 0 AND j.price_minor)"));
        Assert.Equal(0, _street.Records.Count("job", "paid_on IS NULL AND state <> 'Cancelled' AND price_minor <= (SELECT SUM(amount_minor) FROM payment_share s WHERE s.job_id = job.id) AND price_minor > 0"));
        Assert.Equal(0, _street.Records.Count("job", "paid_on IS NOT NULL AND price_minor > (SELECT COALESCE(SUM(amount_minor), 0) FROM payment_share s WHERE s.job_id = job.id)"));
        Assert.True(paid > 0 && laid > 0);
    }

    private long Sum(string sql) => long.Parse(_street.Records.Text(sql.Replace("COALESCE(SUM(amount_minor), 0)", "CAST(COALESCE(SUM(amount_minor), 0) AS TEXT)", StringComparison.Ordinal)), System.Globalization.CultureInfo.InvariantCulture);
}
