using TagPage.Records.Outbox;
using TagPage.Records.Privacy;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Privacy;

/// <summary>From asking to be forgotten until it happens, or not.</summary>
public sealed class ForgetStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly ForgetStore _store;

    public ForgetStoreTests()
    {
        _store = new ForgetStore(_street.Database, new OutboxStore(_street.Database, _street.Time), new Mails(), _street.Clock);
        _street.Records.Change("UPDATE job SET paid_on = '2026-11-20'");
    }

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData("UPDATE job SET paid_on = NULL")]
    [InlineData("UPDATE job SET state = 'Strung', collected_on = NULL")]
    public void Whoever_has_something_open_is_not_forgotten_yet(string before)
    {
        _street.Records.Change(before);

        _street.Refused<TicketsOpen>(() => _store.Ask(Who.Shop, _street.Odalys));
    }

    [Fact]
    public void Waiting_racket_is_open_and_a_cancelled_ticket_is_not()
    {
        var job = _street.Records.Job(_street.Racket);
        _street.Refused<TicketsOpen>(() => _store.Ask(Who.Shop, _street.Odalys));

        _street.Records.Change("UPDATE job SET state = 'Cancelled' WHERE id = @job", new { job });
        _street.Check(true, () => _store.Ask(Who.Shop, _street.Odalys));
    }

    [Theory]
    [InlineData(Actor.Shop, 0)]
    [InlineData(Actor.Owner, 1)]
    public void Owner_hears_of_what_a_client_asked_for_and_the_client_of_either(Actor actor, int requests)
    {
        _store.Ask(_street.BeFresh(actor), _street.Odalys);

        Assert.Equal(requests, _street.Records.Count("client_request", "kind = 'Forget'"));
        Assert.Equal("forgetting", _street.Records.Text("SELECT subject FROM outbox"));
    }

    [Fact]
    public void Asking_again_moves_nothing_and_sends_nothing_more()
    {
        var odalys = _street.BeFresh(Actor.Owner);
        _store.Ask(odalys, _street.Odalys);
        _street.Time.Advance(TimeSpan.FromMinutes(5));
        var before = _street.Database.Dump();

        Assert.IsType<Outcome.Done>(_store.Ask(odalys, _street.Odalys));

        Assert.Equal(before, _street.Database.Dump());
    }

    [Fact]
    public void Week_of_grace_is_whole()
    {
        _store.Ask(Who.Shop, _street.Odalys);

        _street.Time.Advance(ForgetStore.Grace - TimeSpan.FromSeconds(1));
        Assert.Empty(_store.Due());
        _street.Time.Advance(TimeSpan.FromSeconds(1));
        Assert.Equal([_street.Odalys], _store.Due());
    }

    [Fact]
    public void Whoever_brings_a_racket_meanwhile_waits_until_that_is_settled()
    {
        _store.Ask(Who.Shop, _street.Odalys);
        var job = _street.Records.Job(_street.Racket);
        _street.Time.Advance(ForgetStore.Grace);
        Assert.Empty(_store.Due());

        _street.Records.Change("UPDATE job SET state = 'Cancelled' WHERE id = @job", new { job });
        Assert.Equal([_street.Odalys], _store.Due());
    }

    [Fact]
    public void Whoever_thinks_better_of_it_stays_and_needs_no_code_for_that()
    {
        _store.Ask(_street.BeFresh(Actor.Owner), _street.Odalys);

        _street.Check(true, () => _store.Undo(Who.Client(_street.Odalys), _street.Odalys));

        Assert.Equal(0, _street.Records.Count("client_request"));
        _street.Time.Advance(ForgetStore.Grace);
        Assert.Empty(_store.Due());
        var before = _street.Database.Dump();
        Assert.IsType<Outcome.Done>(_store.Undo(Who.Shop, _street.Odalys));
        Assert.Equal(before, _street.Database.Dump());
    }
}
