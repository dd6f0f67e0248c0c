using Dapper;
using TagPage.Records.Accounts;
using TagPage.Records.Outbox;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Accounts;

/// <summary>Bram’s PIN on the tablet on the bench, and on another one.</summary>
public sealed class PinStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly Account _bram = new() { Name = "bram", NormalizedName = "BRAM", SecurityStamp = "first", Role = Roles.Bench };
    private readonly Account _runa = new() { Name = "runa", NormalizedName = "RUNA", SecurityStamp = "first" };
    private readonly long _bench, _other;

    public PinStoreTests()
    {
        foreach (var account in new[] { _bram, _runa })
        {
            new AccountStore(_street.Database, _street.Time).Add(account);
            Store.Set(account.Id, "hash of " + account.Name);
        }
        (_bench, _other) = (Share("bench"), Share("other"));
    }

    private PinStore Store => new(_street.Database, _street.Time);

    private TabletStore Tablets => new(_street.Database, _street.Time);

    private SessionStore Sessions => new(_street.Database, new OutboxStore(_street.Database, _street.Time), _street.Time);

    private long Share(string secret) => ((Outcome.Done)Tablets.Share(Who.Shop, secret, secret)).Id;

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Each_wrong_pin_after_two_waits_twice_as_long_and_the_fifth_locks()
    {
        var waits = new List<double>();
        for (var n = 0; n < PinStore.MostWrong; n++)
        {
            var wait = Store.Take(_bench, _bram.Id)!.Wait;
            waits.Add(wait.TotalSeconds);
            _street.Time.Advance(wait);
            if (wait > TimeSpan.Zero)
                Assert.NotNull(Store.Take(_bench, _bram.Id)!.Hash);
        }
        _street.Time.Advance(TimeSpan.FromDays(400));

        Assert.Equal([0, 0, 5, 10, 20], waits);
        Assert.True(Store.Take(_bench, _bram.Id)!.IsLocked);
        Assert.True(Assert.Single(Store.People(_bench), person => person.Name == "bram").IsLocked);
    }

    [Fact]
    public void Helper_who_owes_a_second_step_is_known_and_a_session_by_pin_ends_but_not_the_owners()
    {
        var (bram, runa) = (Sessions.BeginByPin(_bram.Id, _bench, ""), Sessions.BeginByPin(_runa.Id, _bench, ""));
        Assert.NotNull(Sessions.Live(bram, _bram.Id, "first"));
        _street.Database.Write(c => c.Execute("UPDATE shop SET helpers_second_step = 1; INSERT INTO shop (id, name, country, time_zone, currency, tension_unit, helpers_second_step) SELECT 1, 'Bench', 'GB', 'Etc/UTC', 'GBP', 'Lb', 1 WHERE NOT EXISTS (SELECT 1 FROM shop)"));

        Assert.Equal((true, false), (Store.Take(_bench, _bram.Id)!.OwesSecondStep, Store.Take(_bench, _runa.Id)!.OwesSecondStep));
        Assert.Null(Sessions.Live(bram, _bram.Id, "first"));
        Assert.NotNull(Sessions.Live(runa, _runa.Id, "first"));
        _street.Database.Write(c => c.Execute("UPDATE account SET two_factor = 1, authenticator_key = 'sealed' WHERE name = 'bram'"));
        Assert.NotNull(Sessions.Live(bram, _bram.Id, "first"));
    }

    [Fact]
    public void What_was_wrong_on_one_tablet_or_by_one_person_locks_nobody_else()
    {
        Lock();

        Assert.Equal("hash of runa", Store.Take(_bench, _runa.Id)!.Hash);
        Assert.Equal("hash of bram", Store.Take(_other, _bram.Id)!.Hash);
    }

    [Fact]
    public void Full_sign_in_frees_and_so_does_a_new_pin()
    {
        Lock();
        Store.Forgive(_bench, _bram.Id);
        Assert.NotNull(Store.Take(_bench, _bram.Id)!.Hash);

        Lock();
        Store.Set(_bram.Id, "another hash");
        Assert.Equal("another hash", Store.Take(_bench, _bram.Id)!.Hash);
    }

    [Fact]
    public void Clock_set_back_frees_nobody_and_locks_nobody_for_good()
    {
        Store.Take(_bench, _bram.Id);
        Store.Take(_bench, _bram.Id);
        _street.Records.Change("UPDATE pin_try SET last_at = '2026-11-25T10:00:03.000Z'");

        Assert.Equal(TimeSpan.FromSeconds(2), Store.Take(_bench, _bram.Id)!.Wait);
        _street.Records.Change("UPDATE pin_try SET last_at = '2027-11-25T10:00:00.000Z'");
        Assert.NotNull(Store.Take(_bench, _bram.Id)!.Hash);
    }

    private void Lock() => _street.Records.Change($"INSERT INTO pin_try (tablet_id, account_id, wrong, last_at) VALUES ({_bench}, '{_bram.Id}', 5, '2026-11-25') ON CONFLICT DO UPDATE SET wrong = 5");

    [Fact]
    public void Nobody_without_a_pin_can_be_tried()
    {
        Store.Set(_bram.Id, "");

        Assert.Null(Store.Take(_bench, _bram.Id));
        Assert.Equal(["runa"], Store.People(_bench).Select(person => person.Name));
    }

    [Fact]
    public void By_pin_even_the_owner_is_at_the_bench_and_for_twelve_hours()
    {
        var session = Sessions.BeginByPin(_runa.Id, _bench, "");

        var live = Sessions.Live(session, _runa.Id, "first")!;
        Assert.Equal((Roles.Bench, true), (live.Role, live.ByPin));
        _street.Time.Advance(PinStore.Lasts);
        Assert.Null(Sessions.Live(session, _runa.Id, "first"));
    }

    [Fact]
    public void Tablet_that_is_no_longer_shared_signs_out_whoever_changed_over_there()
    {
        var (there, elsewhere) = (Sessions.BeginByPin(_bram.Id, _bench, ""), Sessions.BeginByPin(_bram.Id, _other, ""));

        _street.Check(true, () => Tablets.End(Who.Shop, _bench));

        Assert.Null(Sessions.Live(there, _bram.Id, "first"));
        Assert.NotNull(Sessions.Live(elsewhere, _bram.Id, "first"));
        Assert.Null(Tablets.Find("bench"));
    }

    [Fact]
    public void Whoever_signs_every_browser_out_shares_none_any_more()
    {
        new EverySessionStore(_street.Database).End();

        Assert.Null(Tablets.Find("bench"));
    }
}
