using TagPage.Records.Accounts;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Accounts;

/// <summary>The one link that makes somebody the owner of an empty shop.</summary>
public sealed class SetUpStoreTests : IDisposable
{
    private static readonly SetUpEntry Quayside = new() { ShopName = "Quayside Strings", Country = "GB", TimeZone = "Europe/London", Currency = "GBP" };

    private readonly Street _street = new();
    private readonly SetUpStore _store;

    public SetUpStoreTests() => _store = new SetUpStore(_street.Database, _street.Time);

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Link_works_once()
    {
        var token = _store.NewToken()!;

        _street.Check(true, () => _store.SetUp(token, Quayside, Runa()));

        Assert.False(_store.IsOpen(token));
        _street.Check(false, () => _store.SetUp(token, Quayside, Runa("mallory")));
        Assert.Equal("runa", _street.Records.Text("SELECT group_concat(name) FROM account"));
    }

    [Fact]
    public void Link_works_for_half_an_hour()
    {
        var token = _store.NewToken()!;
        _street.Time.Advance(TimeSpan.FromMinutes(30) - TimeSpan.FromSeconds(1));
        Assert.True(_store.IsOpen(token));

        _street.Time.Advance(TimeSpan.FromSeconds(1));

        _street.Check(false, () => _store.SetUp(token, Quayside, Runa()));
    }

    [Fact]
    public void Newer_link_ends_the_older_and_a_guess_opens_nothing()
    {
        var (old, newer) = (_store.NewToken()!, _store.NewToken()!);

        _street.Check(false, () => _store.SetUp(old, Quayside, Runa()));
        _street.Check(false, () => _store.SetUp("", Quayside, Runa()));
        _street.Check(false, () => _store.SetUp(newer[..^1], Quayside, Runa()));
        Assert.True(_store.IsOpen(newer));
    }

    [Fact]
    public void Shop_that_has_an_owner_gets_no_link()
    {
        new AccountStore(_street.Database, _street.Time).Add(Runa());

        Assert.Null(_store.NewToken());
        Assert.Equal(0, _street.Records.Count("setup_link"));
    }

    [Fact]
    public void Shop_that_was_imported_before_its_owner_came_keeps_what_the_form_does_not_ask_for()
    {
        _street.Check(true, () => _store.SetUp(_store.NewToken()!, Quayside, Runa()));

        Assert.Equal("Quayside Strings|Eastmere|Saturday 9:00–13:00|2", _street.Records.Text("SELECT name || '|' || town || '|' || opening_hours || '|' || version FROM shop"));
    }

    [Fact]
    public void Link_is_kept_nowhere_in_the_clear()
    {
        var token = _store.NewToken()!;

        Assert.Equal(0, _street.Records.Count("setup_link", $"token_hash LIKE '%{token[..8]}%'"));
        Assert.Equal(1, _street.Records.Count("setup_link"));
    }

    private static Account Runa(string name = "runa") => new() { Name = name, NormalizedName = name.ToUpperInvariant(), PasswordHash = "hash", SecurityStamp = "stamp" };
}
