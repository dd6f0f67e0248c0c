using TagPage.Records.Clients;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Clients;

public sealed class PayerStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly PayerStore _store;

    public PayerStoreTests() => _store = new PayerStore(_street.Database, new ShopStore(_street.Database), _street.Time);

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Payer_comes_back_as_saved_with_the_clients_they_pay_for()
    {
        var id = Add(Academy);
        _street.Records.Change("UPDATE client SET payer_id = @id", new { id });

        var row = _store.Get(id)!;

        Assert.Equal(("Eastmere Juniors", "+442079460199", "bursar@eastmere.example", "by transfer", 2), (row.Name, row.Phone, row.Mail, row.Note, row.Clients));
        Assert.Equal(row, Assert.Single(_store.List()));
    }

    [Fact]
    public void Form_sent_twice_is_one_payer()
    {
        var entry = Academy;

        Assert.Equal(Add(entry), Add(entry));

        Assert.Equal(1, _street.Records.Count("payer"));
    }

    [Fact]
    public void Second_of_two_who_read_the_same_payer_changes_nothing()
    {
        var id = Add(Academy);
        _street.Check(true, () => _store.Change(Who.Shop, id, Academy with { Version = 1, Note = "first" }));

        _street.Refused<SavedMeanwhile>(() => _store.Change(Who.Shop, id, Academy with { Version = 1, Note = "second" }));

        Assert.Equal("first", _store.Get(id)!.Note);
    }

    [Fact]
    public void Payer_who_is_not_there_is_absent()
    {
        _street.Check(false, () => _store.Change(Who.Shop, 99, Academy with { Version = 1 }));
        Assert.Null(_store.Get(99));
    }

    [Fact]
    public void Payers_stand_from_A_to_Z_however_they_are_written()
    {
        foreach (var name in new[] { "beta", "Alpha", "Gamma" })
            Add(Academy with { Name = name });

        Assert.Equal(["Alpha", "beta", "Gamma"], _store.List().Select(row => row.Name));
    }

    private long Add(PayerEntry entry) => Assert.IsType<Outcome.Done>(_store.Add(Who.Shop, entry)).Id;

    private static PayerEntry Academy => new()
    {
        FormKey = FormKey.New(),
        Name = "Eastmere Juniors",
        Phone = "020 7946 0199",
        Mail = "bursar@eastmere.example",
        Note = "by transfer",
    };
}
