using TagPage.Core.Strings;
using TagPage.Records.Readings;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Readings;

/// <summary>Who may change what readings are taken on, and what stays as it is.</summary>
public sealed class InstrumentStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly InstrumentStore _store;

    public InstrumentStoreTests()
    {
        _street.Records.Change("INSERT INTO instrument (name, scale) VALUES ('bench gauge', 'Stiffness')");
        _store = new InstrumentStore(_street.Database, _street.Time);
    }

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData(Actor.Shop, true)]
    [InlineData(Actor.Owner, false)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Only_the_shop_adds_and_changes_them(Actor actor, bool allowed)
    {
        var who = _street.Be(actor);

        _street.Check(allowed, () => _store.Add(who, Entry("phone at the bench")));
        _street.Check(allowed, () => _store.Change(who, 1, Entry("old gauge")));
    }

    [Fact]
    public void Scale_stays_once_something_was_read_on_it()
    {
        _street.Records.Change("INSERT INTO reading (job_id, first, taken_on, instrument_id, value) VALUES (@Strung, 1, '2026-11-01', 1, 62)", new { _street.Strung });

        _street.Refused<InstrumentInUse>(() => _store.Change(Who.Shop, 1, Entry("bench gauge") with { Scale = ReadingScale.Hertz }));
        _street.Check(true, () => _store.Change(Who.Shop, 1, Entry("old gauge")));
    }

    [Fact]
    public void Two_are_not_called_the_same_however_it_is_written()
    {
        _street.Refused<InstrumentNameTaken>(() => _store.Add(Who.Shop, Entry("Bench Gauge")));
        _street.Check(true, () => _store.Change(Who.Shop, 1, Entry("Bench Gauge")));
    }

    private static InstrumentEntry Entry(string name) => new() { FormKey = FormKey.New(), Version = 1, Name = name, Scale = ReadingScale.Stiffness };
}
