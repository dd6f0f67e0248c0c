using TagPage.Records.Loans;
using TagPage.Records.Outbox;
using TagPage.Records.Privacy;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Loans;

/// <summary>The shop's demo 1, lent to Odalys or to Ewan.</summary>
public sealed class LoanStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly long _demo;

    public LoanStoreTests() => _demo = ((Outcome.Done)Rackets.Add(Who.Shop, Demo("Demo 1"))).Id;

    private LoanRacketStore Rackets => new(_street.Database, _street.Clock);

    private LoanStore Loans => new(_street.Database, _street.Clock);

    private LoanRacketRow Racket => Rackets.Get(Who.Shop, _demo)!;

    private static LoanRacketEntry Demo(string name) => new() { FormKey = FormKey.New(), Version = 1, Name = name };

    private LoanEntry ForAWeek => new() { FormKey = FormKey.New(), RacketId = _demo, LentOn = Street.Today, DueOn = Street.Today.AddDays(7), Note = "for a test" };

    private long Lend(long client) => ((Outcome.Done)Loans.Lend(Who.Bench(null), client, ForAWeek)).Id;

    private long LendOn(long client, int days) => ((Outcome.Done)Loans.Lend(Who.Shop, client, ForAWeek with { LentOn = Street.Today.AddDays(days) })).Id;

    public void Dispose() => _street.Dispose();

    [Fact]
    public void It_is_with_one_client_until_it_is_back()
    {
        var loan = Lend(_street.Odalys);
        Assert.Equal(("Odalys Ferran", false, Street.Today.AddDays(7)), (Racket.Client, Racket.IsFree, Racket.DueOn!.Value));
        Assert.Equal("Demo 1", Assert.Single(Loans.OfClient(Who.Shop, _street.Odalys)).Racket);

        Assert.Equal("Odalys Ferran", _street.Refused<LentAlready>(() => Loans.Lend(Who.Shop, _street.Ewan, ForAWeek)).Client);

        _street.Check(true, () => Loans.TakeBack(Who.Shop, loan, Street.Today));
        Assert.True(Racket.IsFree);
        Assert.IsType<Outcome.Done>(Loans.Lend(Who.Shop, _street.Ewan, ForAWeek));
    }

    [Fact]
    public void Of_two_tablets_that_lend_it_at_once_one_does_and_the_other_is_told()
    {
        var outcomes = new Outcome[2];
        var clients = new[] { _street.Odalys, _street.Ewan };
        Parallel.For(0, 2, tablet => outcomes[tablet] = Loans.Lend(Who.Shop, clients[tablet], ForAWeek));

        Assert.Single(outcomes, outcome => outcome is Outcome.Done);
        Assert.Single(outcomes, outcome => outcome is Outcome.Refused { Why: LentAlready });
        Assert.Equal(1, _street.Records.Count("loan"));
    }

    [Fact]
    public void Schema_lets_no_racket_be_lent_twice_whoever_writes()
    {
        Lend(_street.Odalys);

        Assert.Throws<Microsoft.Data.Sqlite.SqliteException>(() =>
            _street.Records.Change("INSERT INTO loan (loan_racket_id, client_id, lent_on, made_by) VALUES (@_demo, @Ewan, '2026-11-25', 'Shop')", new { _demo, _street.Ewan }));
    }

    [Theory]
    [InlineData(-6, false)]
    [InlineData(-5, false)]
    [InlineData(-3, false)]
    [InlineData(-2, true)]
    [InlineData(0, true)]
    public void Racket_is_not_lent_from_a_day_on_which_somebody_had_it(int days, bool lent)
    {
        Loans.TakeBack(Who.Shop, LendOn(_street.Odalys, -5), Street.Today.AddDays(-2));
        var again = ForAWeek with { LentOn = Street.Today.AddDays(days) };

        if (lent)
            _street.Check(true, () => Loans.Lend(Who.Shop, _street.Ewan, again));
        else
            Assert.Equal(new LentThen("Demo 1", "Odalys Ferran", Street.Today.AddDays(-2)), _street.Refused<LentThen>(() => Loans.Lend(Who.Shop, _street.Ewan, again)));
    }

    [Fact]
    public void Of_two_tablets_that_note_a_loan_and_its_return_on_the_same_days_one_is_told()
    {
        var clients = new[] { _street.Odalys, _street.Ewan };
        var outcomes = new Outcome[2];
        Parallel.For(0, 2, tablet =>
        {
            outcomes[tablet] = Loans.Lend(Who.Shop, clients[tablet], ForAWeek with { LentOn = Street.Today.AddDays(-5) });
            if (outcomes[tablet] is Outcome.Done { Id: var loan })
                Loans.TakeBack(Who.Shop, loan, Street.Today.AddDays(-1));
        });

        Assert.Single(outcomes, outcome => outcome is Outcome.Done);
        Assert.Single(outcomes, outcome => outcome is Outcome.Refused { Why: LentThen or LentAlready });
        Assert.Equal(1, _street.Records.Count("loan"));
    }

    [Fact]
    public void Loan_is_not_opened_again_where_somebody_had_the_racket_since()
    {
        var loan = LendOn(_street.Odalys, -5);
        Loans.TakeBack(Who.Shop, loan, Street.Today.AddDays(-4));
        Loans.TakeBack(Who.Shop, LendOn(_street.Ewan, -3), Street.Today.AddDays(-1));

        Assert.Equal("Ewan Lockyer", _street.Refused<LentThen>(() => Loans.Reopen(Who.Shop, loan)).Client);
    }

    [Fact]
    public void Form_sent_twice_lends_once()
    {
        var twice = ForAWeek;

        Assert.Equal(Loans.Lend(Who.Shop, _street.Odalys, twice), Loans.Lend(Who.Shop, _street.Odalys, twice));
        Assert.Equal(1, _street.Records.Count("loan"));
    }

    [Fact]
    public void Overdue_is_what_should_have_been_back_before_today()
    {
        Lend(_street.Odalys);
        _street.Time.Advance(TimeSpan.FromDays(7));
        Assert.Empty(Loans.Overdue(Who.Shop));

        _street.Time.Advance(TimeSpan.FromDays(1));
        Assert.Equal("Demo 1", Assert.Single(Loans.Overdue(Who.Shop)).Racket);
        Assert.True(Racket.IsOverdue(_street.Clock.Today));
    }

    [Fact]
    public void Loan_without_a_day_is_never_overdue()
    {
        Loans.Lend(Who.Shop, _street.Odalys, ForAWeek with { DueOn = null });
        _street.Time.Advance(TimeSpan.FromDays(400));

        Assert.Empty(Loans.Overdue(Who.Shop));
    }

    [Fact]
    public void Days_that_do_not_fit_are_refused()
    {
        _street.Refused<LentInFuture>(() => Loans.Lend(Who.Shop, _street.Odalys, ForAWeek with { LentOn = Street.Today.AddDays(1) }));
        _street.Refused<DueBeforeLent>(() => Loans.Lend(Who.Shop, _street.Odalys, ForAWeek with { DueOn = Street.Today.AddDays(-1) }));
        var loan = Lend(_street.Odalys);
        _street.Refused<BackInFuture>(() => Loans.TakeBack(Who.Shop, loan, Street.Today.AddDays(1)));
        Assert.Equal(Street.Today, _street.Refused<BackBeforeLent>(() => Loans.TakeBack(Who.Shop, loan, Street.Today.AddDays(-1))).LentOn);

        Loans.TakeBack(Who.Shop, loan, Street.Today);
        _street.Refused<GivenBackAlready>(() => Loans.TakeBack(Who.Shop, loan, Street.Today));
    }

    [Fact]
    public void Given_back_by_mistake_it_is_out_again_unless_somebody_else_has_it()
    {
        var loan = Lend(_street.Odalys);
        Loans.TakeBack(Who.Shop, loan, Street.Today);
        _street.Check(true, () => Loans.Reopen(Who.Shop, loan));
        Assert.Equal("Odalys Ferran", Racket.Client);

        Loans.TakeBack(Who.Shop, loan, Street.Today);
        Lend(_street.Ewan);
        Assert.Equal("Ewan Lockyer", _street.Refused<LentAlready>(() => Loans.Reopen(Who.Shop, loan)).Client);
    }

    [Fact]
    public void What_a_client_has_stays_on_the_list_and_what_is_no_longer_lent_is_not_lent()
    {
        var loan = Lend(_street.Odalys);
        Assert.Equal("Odalys Ferran", _street.Refused<LentNow>(() => Rackets.Change(Who.Shop, _demo, Demo("Demo 1") with { IsEnded = true })).Client);

        Loans.TakeBack(Who.Shop, loan, Street.Today);
        Assert.IsType<Outcome.Done>(Rackets.Change(Who.Shop, _demo, Demo("Demo 1") with { IsEnded = true }));
        _street.Refused<LoanRacketUnknown>(() => Loans.Lend(Who.Shop, _street.Odalys, ForAWeek));
        _street.Refused<LoanRacketUnknown>(() => Loans.Lend(Who.Shop, _street.Odalys, ForAWeek with { RacketId = 99 }));
    }

    [Fact]
    public void Two_rackets_of_one_name_are_refused()
    {
        _street.Refused<LoanNameTaken>(() => Rackets.Add(Who.Shop, Demo("demo 1")));
    }

    [Fact]
    public void Client_with_a_racket_of_the_shops_is_not_forgotten_and_afterwards_the_loan_goes_too()
    {
        _street.Records.Change("UPDATE job SET paid_on = '2026-11-20'");
        var forgets = new ForgetStore(_street.Database, new OutboxStore(_street.Database, _street.Time), new Mails(), _street.Clock);
        var loan = Lend(_street.Odalys);
        _street.Refused<LoanOpen>(() => forgets.Ask(Who.Shop, _street.Odalys));

        Loans.TakeBack(Who.Shop, loan, Street.Today);
        Assert.IsType<Outcome.Done>(forgets.Ask(Who.Shop, _street.Odalys));
        _street.Time.Advance(TimeSpan.FromDays(8));
        Assert.Equal([_street.Odalys], forgets.Due());
        Lend(_street.Odalys);
        Assert.Empty(forgets.Due());

        _street.Database.Write(c => EraseStore.EraseRecords(c, _street.Odalys, _street.Clock.Now));
        Assert.Equal((0, 1), (_street.Records.Count("loan"), _street.Records.Count("loan_racket")));
    }
}
