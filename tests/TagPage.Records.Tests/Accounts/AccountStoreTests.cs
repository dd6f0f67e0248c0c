using TagPage.Records.Accounts;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Accounts;

/// <summary>By what runa signs in.</summary>
public sealed class AccountStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly AccountStore _store;
    private readonly PasskeyStore _passkeys;
    private readonly Account _runa = new() { Name = "runa", NormalizedName = "RUNA", PasswordHash = "hash", SecurityStamp = "first" };

    public AccountStoreTests()
    {
        (_store, _passkeys) = (new AccountStore(_street.Database, _street.Time), new PasskeyStore(_street.Database));
        _store.Add(_runa);
    }

    public void Dispose() => _street.Dispose();

    [Fact]
    public void No_code_is_taken_twice_nor_an_older_one_after_it()
    {
        Assert.True(_store.TakeCode(_runa.Id, 7));
        Assert.False(_store.TakeCode(_runa.Id, 7));
        Assert.False(_store.TakeCode(_runa.Id, 6));
        Assert.True(_store.TakeCode(_runa.Id, 8));
        Assert.False(_store.TakeCode("nobody", 9));
    }

    [Fact]
    public void Second_of_two_saves_that_read_the_same_changes_nothing()
    {
        var (phone, laptop) = (_store.Get(_runa.Id)!, _store.Get(_runa.Id)!);
        phone.RecoveryHashes = "one left";
        laptop.RecoveryHashes = "the other left";

        Assert.True(_store.Change(phone));
        Assert.False(_store.Change(laptop));
        Assert.Equal("one left", _store.Get(_runa.Id)!.RecoveryHashes);
    }

    [Fact]
    public void Passkey_is_kept_counted_and_removed_by_its_own_account_alone()
    {
        var bench = new Account { Name = "bench", NormalizedName = "BENCH", PasswordHash = "hash", SecurityStamp = "first" };
        _store.Add(bench);
        var phone = new PasskeyRow { Id = [1, 0, 255], Name = "phone", PublicKey = [2], SignCount = 3, Transports = "internal", UserVerified = true, MadeAt = _street.Time.GetUtcNow() };
        _passkeys.Save(_runa.Id, phone);

        _passkeys.Save(_runa.Id, phone with { SignCount = 4, PublicKey = [9] });
        _passkeys.Save(bench.Id, phone with { SignCount = 99 });

        var kept = Assert.Single(_passkeys.Of(_runa.Id));
        Assert.Equal((4, "phone", true, phone.MadeAt), (kept.SignCount, kept.Name, kept.UserVerified, kept.MadeAt));
        Assert.Equal([1, 0, 255], kept.Id);
        Assert.Equal([2], kept.PublicKey);
        Assert.Equal((_runa.Id, null), (_passkeys.AccountOf(phone.Id), _passkeys.AccountOf([1, 0])));
        Assert.Empty(_passkeys.Of(bench.Id));
        Assert.False(_passkeys.Remove(bench.Id, phone.Id));
        Assert.True(_passkeys.Remove(_runa.Id, phone.Id));
        Assert.Null(_passkeys.AccountOf(phone.Id));
    }
}
