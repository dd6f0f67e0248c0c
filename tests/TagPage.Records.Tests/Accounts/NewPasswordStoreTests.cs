using TagPage.Records.Accounts;
using TagPage.Records.Outbox;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Accounts;

/// <summary>The one-time link of an owner who forgot the password.</summary>
public sealed class NewPasswordStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly NewPasswordStore _store;
    private readonly AccountStore _accounts;
    private readonly Account _runa = new() { Name = "runa", NormalizedName = "RUNA", PasswordHash = "old", SecurityStamp = "first" };

    public NewPasswordStoreTests()
    {
        (_store, _accounts) = (new NewPasswordStore(_street.Database, _street.Time), new AccountStore(_street.Database, _street.Time));
        _accounts.Add(_runa);
    }

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Link_sets_the_password_once_and_signs_everybody_out()
    {
        new SessionStore(_street.Database, new OutboxStore(_street.Database, _street.Time), _street.Time).Begin(_runa.Id, SignInWay.Password, "");
        var token = _store.NewToken()!;
        var owner = _store.OwnerBehind(token)!;
        (owner.PasswordHash, owner.SecurityStamp) = ("new", "second");

        _street.Check(true, () => _store.Set(token, owner));

        Assert.Equal(("new", "second"), (_accounts.Get(_runa.Id)!.PasswordHash, _accounts.Get(_runa.Id)!.SecurityStamp));
        Assert.Equal(0, _street.Records.Count("session"));
        owner.PasswordHash = "a third";
        _street.Check(false, () => _store.Set(token, owner));
        Assert.Null(_store.OwnerBehind(token));
    }

    [Fact]
    public void Link_takes_away_whatever_else_signed_in()
    {
        (_runa.TwoFactor, _runa.AuthenticatorKey, _runa.RecoveryHashes) = (true, "sealed", "hash hash");
        Assert.True(_accounts.Change(_runa));
        new PasskeyStore(_street.Database).Save(_runa.Id, new PasskeyRow { Id = [1], Name = "phone" });
        var token = _store.NewToken()!;

        _street.Check(true, () => _store.Set(token, _store.OwnerBehind(token)!));

        var runa = _accounts.Get(_runa.Id)!;
        Assert.Equal((false, "", ""), (runa.TwoFactor, runa.AuthenticatorKey, runa.RecoveryHashes));
        Assert.Equal(0, _street.Records.Count("passkey"));
    }

    [Theory]
    [InlineData(1799, true)]
    [InlineData(1800, false)]
    public void Link_is_open_for_half_an_hour(int seconds, bool open)
    {
        var token = _store.NewToken()!;

        _street.Time.Advance(TimeSpan.FromSeconds(seconds));

        Assert.Equal(open, _store.OwnerBehind(token) is not null);
        _street.Check(open, () => _store.Set(token, _runa));
    }

    [Fact]
    public void Newer_link_voids_the_older_and_what_is_no_link_opens_nothing()
    {
        var (older, newer) = (_store.NewToken()!, _store.NewToken()!);

        Assert.All([older, "", newer + "x", newer[..^1], newer.ToUpperInvariant() + newer], token =>
        {
            Assert.Null(_store.OwnerBehind(token));
            _street.Check(false, () => _store.Set(token, _runa));
        });
        Assert.NotNull(_store.OwnerBehind(newer));
    }

    [Fact]
    public void Link_sets_the_password_of_no_other_account()
    {
        var bench = new Account { Name = "bench", NormalizedName = "BENCH", PasswordHash = "old", Role = "Stringer" };
        var token = _store.NewToken()!;

        _street.Check(false, () => _store.Set(token, bench));
    }

    [Fact]
    public void Token_stands_nowhere_on_file() =>
        Assert.DoesNotContain(_store.NewToken()!, _street.Records.Text("SELECT token_hash FROM setup_link"), StringComparison.Ordinal);

    [Fact]
    public void Shop_without_an_owner_has_no_password_to_forget()
    {
        _accounts.Remove(_runa.Id);

        Assert.Null(_store.NewToken());
        Assert.Equal(0, _street.Records.Count("setup_link"));
    }

    [Fact]
    public void Second_of_two_who_read_the_same_account_changes_nothing_and_is_told()
    {
        var (first, second) = (_accounts.Get(_runa.Id)!, _accounts.Named("RUNA")!);
        (first.PasswordHash, second.PasswordHash) = ("first", "second");

        Assert.True(_accounts.Change(first));
        Assert.False(_accounts.Change(second));
        first.Name = "Runa";
        Assert.True(_accounts.Change(first));

        Assert.Equal(("first", "Runa"), (_accounts.Get(_runa.Id)!.PasswordHash, _accounts.Get(_runa.Id)!.Name));
        Assert.Null(_accounts.Named("runa"));
    }
}
