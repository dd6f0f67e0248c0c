using TagPage.Records.Clients;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Clients;

/// <summary>The client's whole record, with payer and note, which only the shop writes.</summary>
public sealed class ClientStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly ClientStore _store;

    public ClientStoreTests() => _store = new ClientStore(_street.Database, new ShopStore(_street.Database), _street.Clock);

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData(Actor.Shop, true)]
    [InlineData(Actor.Owner, false)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Record_is_changed_by_the_shop_alone(Actor actor, bool allowed) =>
        _street.Check(allowed, () => _store.Change(_street.Be(actor), _street.Odalys, Entry with { Version = 1 }));

    [Fact]
    public void Record_saved_meanwhile_is_not_overwritten()
    {
        _street.Records.Change("UPDATE client SET version = 2");
        _street.Refused<SavedMeanwhile>(() => _store.Change(Who.Shop, _street.Odalys, Entry with { Version = 1 }));
    }

    [Fact]
    public void Payer_who_is_not_on_file_is_refused() =>
        _street.Refused<PayerUnknown>(() => _store.Change(Who.Shop, _street.Odalys, Entry with { Version = 1, PayerId = 77 }));

    [Theory]
    [InlineData(true, "")]
    [InlineData(false, "2026-11-25")]
    public void Day_is_kept_since_when_reminders_are_unwanted(bool wanted, string since)
    {
        _store.Change(Who.Shop, _street.Odalys, Entry with { Version = 1, Reminders = wanted });

        Assert.Equal(since, _street.Records.Text("SELECT COALESCE(reminders_changed_on, '') FROM client WHERE name = 'Odalys Ferran'"));
    }

    private static ClientEntry Entry => new() { Name = "Odalys Ferran", Mail = "new@ferran.example", Language = "en", Reminders = true };
}
