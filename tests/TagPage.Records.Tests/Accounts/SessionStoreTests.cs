using TagPage.Records.Accounts;
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
        _store = new SessionStore(_street.Database, _street.Time);
        new AccountStore(_street.Database, _street.Time).Add(_runa);
    }

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Browser_is_signed_in_under_its_own_number_account_and_password_only()
    {
        var id = _store.Begin(_runa.Id);

        Assert.True(IsLive(id));
        Assert.False(_store.IsLive(_store.Begin(_runa.Id)[..31] + "x", _runa.Id, "first"));
        Assert.False(_store.IsLive(id, "somebody else", "first"));
        Assert.False(_store.IsLive(id, _runa.Id, "stamp of another password"));
    }

    [Fact]
    public void Session_ends_after_90_days_to_the_second_and_its_row_goes_with_the_next_sign_in()
    {
        var id = _store.Begin(_runa.Id);

        _street.Time.Advance(SessionStore.Longest - TimeSpan.FromSeconds(1));
        Assert.True(IsLive(id));
        _street.Time.Advance(TimeSpan.FromSeconds(1));
        Assert.False(IsLive(id));

        var next = _store.Begin(_runa.Id);
        Assert.Equal(next, _street.Records.Text("SELECT group_concat(id) FROM session"));
    }

    [Fact]
    public void Signing_out_ends_one_browser_and_ending_all_the_rest()
    {
        var (phone, laptop, desk) = (_store.Begin(_runa.Id), _store.Begin(_runa.Id), _store.Begin(_runa.Id));

        _store.End(phone);
        Assert.Equal((false, true, true), (IsLive(phone), IsLive(laptop), IsLive(desk)));

        _store.EndAll(_runa.Id);
        Assert.Equal((false, false), (IsLive(laptop), IsLive(desk)));
    }

    [Fact]
    public void Sessions_of_an_account_go_with_it()
    {
        _store.Begin(_runa.Id);

        new AccountStore(_street.Database, _street.Time).Remove(_runa.Id);

        Assert.Equal(0, _street.Records.Count("session"));
    }

    private bool IsLive(string id) => _store.IsLive(id, _runa.Id, "first");
}
