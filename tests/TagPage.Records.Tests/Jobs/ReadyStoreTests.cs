using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Outbox;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Jobs;

public sealed class ReadyStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly long _first, _second;
    private readonly Party _odalys;

    public ReadyStoreTests()
    {
        _odalys = Party.Client(_street.Odalys);
        (_first, _second) = (Ready(_street.Racket), Ready(_street.Records.Racket(_street.Pim, number: 2)));
    }

    private ReadyStore Store => new(_street.Database, new OutboxStore(_street.Database, _street.Time), new Mails(), new ShopStore(_street.Database), _street.Clock);

    private JobRow Job(long id) => new JobStore(_street.Database).Get(Who.Shop, id)!;

    private long Ready(long racket)
    {
        var job = _street.Records.Job(racket);
        new MoveStore(_street.Database, _street.Clock).MarkStrung(Who.Shop, job, new StrungEntry { StrungOn = Street.Today });
        return job;
    }

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Household_gets_one_email_for_all_that_is_ready()
    {
        Assert.Equal(new Outcome.Done(2), Store.TellAll(Who.Shop, _odalys));

        Assert.Equal($"{Job(_first).Ticket}, {Job(_second).Ticket} ready", _street.Records.Text("SELECT subject FROM outbox"));
        Assert.Equal(1, _street.Records.Count("outbox"));
        Assert.All([_first, _second], id => Assert.NotNull(Job(id).ToldReadyAt));
    }

    [Fact]
    public void What_they_were_told_of_before_is_not_told_again()
    {
        Store.Tell(Who.Shop, _first);

        Assert.Equal(new Outcome.Done(1), Store.TellAll(Who.Shop, _odalys));

        Assert.Equal(1, _street.Records.Count("outbox", $"subject = '{Job(_second).Ticket} ready'"));
        _street.Refused<ToldReadyAlready>(() => Store.TellAll(Who.Shop, _odalys));
    }

    [Fact]
    public void Payers_clients_get_an_email_each_and_whoever_has_no_address_stays_untold()
    {
        var theirs = Ready(_street.Records.Racket(_street.Records.Player(_street.Ewan, "Bo Lockyer")));
        _street.Records.Change("INSERT INTO payer (name) VALUES ('Eastmere Academy'); UPDATE client SET payer_id = 1");

        Assert.Equal(new Outcome.Done(2), Store.TellAll(Who.Shop, Party.Payer(1)));
        Assert.Null(Job(theirs).ToldReadyAt);
        _street.Refused<NoMailAddress>(() => Store.TellAll(Who.Shop, Party.Payer(1)));
    }

    [Fact]
    public void Email_that_was_given_up_has_told_nobody_also_once_it_is_forgotten_and_another_takes_its_place()
    {
        Store.TellAll(Who.Shop, _odalys);
        var version = Job(_first).Version;

        _street.Records.Change("UPDATE outbox SET state = 'Failed', last_error = 'no such mailbox'");

        Assert.All([_first, _second], id => Assert.True(Job(id) is { ToldReadyAt: null, IsTellingFailed: true }));
        Assert.Equal(new Outcome.Done(_first), Store.Tell(Who.Shop, _first));
        Assert.True(Job(_first) is { ToldReadyAt: not null, IsTellingFailed: false } && Job(_first).Version == version + 1);
        Assert.Equal(1, _street.Records.Count("outbox", "state = 'Failed' AND let_go = 1"));
        _street.Records.Change("DELETE FROM outbox WHERE state = 'Failed'");
        Assert.True(Job(_second) is { ToldReadyAt: null, IsTellingFailed: false });
        Assert.NotNull(Job(_first).ToldReadyAt);
    }

    [Fact]
    public void Nothing_ready_is_said()
    {
        _street.Refused<NotReady>(() => Store.TellAll(Who.Shop, Party.Client(_street.Ewan)));
    }
}
