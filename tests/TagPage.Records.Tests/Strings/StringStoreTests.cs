using TagPage.Core.Strings;
using TagPage.Records.Storage;
using TagPage.Records.Strings;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Strings;

/// <summary>Who may change the catalogue, and what stays as it is.</summary>
public sealed class StringStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly StringStore _store;

    /// <summary>The string in Pim's racket.</summary>
    private readonly long _inUse;

    public StringStoreTests() => (_store, _inUse) = (new StringStore(_street.Database, _street.Time), _street.Records.Kind());

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData(Actor.Shop, true)]
    [InlineData(Actor.Owner, false)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Only_the_shop_adds_and_changes_strings(Actor actor, bool allowed)
    {
        var who = _street.Be(actor);

        _street.Check(allowed, () => _store.Add(who, Gut));
        _street.Check(allowed, () => _store.Change(who, _inUse, Used with { Note = "runs stiff" }));
    }

    [Fact]
    public void String_in_a_racket_keeps_what_it_is_made_of_and_takes_a_better_name()
    {
        _street.Refused<StringInUse>(() => _store.Change(Who.Shop, _inUse, Used with { Material = Material.Aramid }));
        _street.Refused<StringInUse>(() => _store.Change(Who.Shop, _inUse, Used with { GaugeMm = 1.30m }));

        _street.Check(true, () => _store.Change(Who.Shop, _inUse, Used with { Name = "Heron Spin II", Offered = false }));
        Assert.False(_store.Get(_inUse)!.Offered);
    }

    [Fact]
    public void Two_of_one_gauge_are_not_called_the_same_however_it_is_written()
    {
        _street.Refused<StringNameTaken>(() => _store.Add(Who.Shop, Used with { Name = "HERON spin" }));
        _street.Check(true, () => _store.Add(Who.Shop, Used with { GaugeMm = 1.30m }));
    }

    [Fact]
    public void Form_sent_twice_makes_one_string()
    {
        var first = _store.Add(Who.Shop, Gut with { FormKey = "0123456789abcdef0123456789abcdef" });
        Assert.Equal(first, _store.Add(Who.Shop, Gut with { FormKey = "0123456789abcdef0123456789abcdef" }));

        Assert.Equal(1, _street.Records.Count("string_kind", "name = 'Quiet Gut'"));
    }

    [Fact]
    public void Second_of_two_who_read_the_same_string_changes_nothing()
    {
        _street.Check(true, () => _store.Change(Who.Shop, _inUse, Used with { Note = "first" }));

        Assert.Equal(Outcome.Stale, _store.Change(Who.Shop, _inUse, Used with { Note = "second" }));
        Assert.Equal("first", _store.Get(_inUse)!.Note);
    }

    [Fact]
    public void String_that_is_not_there_is_not_changed() => Assert.IsType<Outcome.Absent>(_store.Change(Who.Shop, 99, Used));

    private static StringEntry Used => new() { FormKey = FormKey.New(), Version = 1, Name = "Heron Spin", Material = Material.Polyester, GaugeMm = 1.25m };

    private static StringEntry Gut => new() { FormKey = FormKey.New(), Name = "Quiet Gut", Material = Material.NaturalGut, GaugeMm = 1.30m };
}
