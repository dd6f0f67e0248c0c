using TagPage.Records.Accounts;
using TagPage.Records.Outbox;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Accounts;

/// <summary>When a browser that signed in is signed out again.</summary>
public sealed class SessionStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly SessionStore _store;
    private readonly Account _runa = new() { Name = "runa", NormalizedName = "RUNA", PasswordHash = "hash", SecurityStamp = "first" };

    public SessionStoreTests()
    {
        _store = new SessionStore(_street.Database, new OutboxStore(_street.Database, _street.Time), _street.Time);
        new AccountStore(_street.Database, _street.Time).Add(_runa);
    }

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Browser_is_signed_in_under_its_own_number_account_and_password_only()
    {
        var id = Begin();

        Assert.True(IsLive(id));
        Assert.Null(_store.Live(Begin()[..31] + "x", _runa.Id, "first"));
        Assert.Null(_store.Live(id, "somebody else", "first"));
        Assert.Null(_store.Live(id, _runa.Id, "stamp of another password"));
    }

    [Fact]
    public void Session_ends_after_90_days_to_the_second_and_its_row_goes_with_the_next_sign_in()
    {
        var id = Begin();

        _street.Time.Advance(SessionStore.Longest - TimeSpan.FromSeconds(1));
        Assert.True(IsLive(id));
        _street.Time.Advance(TimeSpan.FromSeconds(1));
        Assert.False(IsLive(id));

        var next = Begin();
        Assert.Equal(next, _street.Records.Text("SELECT group_concat(id) FROM session"));
    }

    [Fact]
    public void Signing_out_ends_one_browser_and_ending_all_the_rest()
    {
        var (phone, laptop, desk) = (Begin(), Begin(), Begin());

        _store.End(phone);
        Assert.Equal((false, true, true), (IsLive(phone), IsLive(laptop), IsLive(desk)));

        _store.EndAll(_runa.Id);
        Assert.Equal((false, false), (IsLive(laptop), IsLive(desk)));
    }

    [Fact]
    public void Sessions_of_an_account_go_with_it()
    {
        Begin();

        new AccountStore(_street.Database, _street.Time).Remove(_runa.Id);

        Assert.Equal(0, _street.Records.Count("session"));
    }

    [Fact]
    public void Owner_sees_each_browser_and_ends_any_of_her_own_but_nobody_elses()
    {
        var bench = new Account { Name = "bench", NormalizedName = "BENCH", PasswordHash = "hash", SecurityStamp = "first" };
        new AccountStore(_street.Database, _street.Time).Add(bench);
        var phone = Begin(SignInWay.Passkey, "Fern 12 (Mobile)");
        _street.Time.Advance(TimeSpan.FromHours(1));
        var (laptop, theirs) = (Begin(), _store.Begin(bench.Id, SignInWay.Password, new string('x', 201)));

        Assert.Equal([(laptop, SignInWay.Password, ""), (phone, SignInWay.Passkey, "Fern 12 (Mobile)")], _store.Of(_runa.Id).Select(s => (s.Id, s.Way, s.Browser)));
        Assert.Equal(200, Assert.Single(_store.Of(bench.Id)).Browser.Length);

        Assert.False(_store.End(_runa.Id, theirs));
        Assert.True(_store.End(_runa.Id, phone));
        Assert.Equal([laptop], _store.Of(_runa.Id).Select(s => s.Id));
        Assert.Equal(0, _store.EndOthers(_runa.Id, laptop));
        Begin();
        Assert.Equal(1, _store.EndOthers(_runa.Id, laptop));
        Assert.Equal((true, 1), (IsLive(laptop), _store.Of(bench.Id).Count));
    }

    [Fact]
    public void Shop_is_told_by_email_where_it_has_an_address()
    {
        Begin(news: ("A new browser", "It signed in."));
        Assert.Equal("ShopNotice A new browser", _street.Records.Text("SELECT kind || ' ' || subject FROM outbox"));

        _street.Records.Change("UPDATE shop SET mail = NULL");
        Begin(news: ("A new browser", "It signed in."));
        Assert.Equal(1, _street.Records.Count("outbox"));
    }

    private string Begin(SignInWay way = SignInWay.Password, string browser = "", (string, MailText)? news = null) => _store.Begin(_runa.Id, way, browser, news);

    [Theory]
    [InlineData("Bench", SignInWay.Password, true)]
    [InlineData("Bench", SignInWay.Link, true)]
    [InlineData("Bench", SignInWay.Passkey, false)]
    [InlineData("Owner", SignInWay.Password, false)]
    public void Who_owes_a_second_step_is_known_by_role_and_way(string role, SignInWay way, bool owes)
    {
        var bram = new Account { Name = "bram", NormalizedName = "BRAM", SecurityStamp = "first", Role = role };
        new AccountStore(_street.Database, _street.Time).Add(bram);
        var session = _store.Begin(bram.Id, way, "");

        Assert.False(_store.Live(session, bram.Id, "first")!.OwesSecondStep);
        _street.Records.Change("UPDATE shop SET helpers_second_step = 1");

        Assert.Equal(owes, _store.Live(session, bram.Id, "first")!.OwesSecondStep);
        _street.Records.Change("UPDATE account SET two_factor = 1, authenticator_key = 'sealed' WHERE name = 'bram'");
        Assert.False(_store.Live(session, bram.Id, "first")!.OwesSecondStep);
    }

    private bool IsLive(string id) => _store.Live(id, _runa.Id, "first") is not null;
}
