using TagPage.Records.Specs;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Specs;

/// <summary>Who may write down what a racket weighs, and that it stays with its racket.</summary>
public sealed class SpecStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly SpecStore _store;

    public SpecStoreTests() => _store = new SpecStore(_street.Database, _street.Time);

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData(Actor.Shop, true)]
    [InlineData(Actor.Owner, false)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Only_the_shop_writes_them_down_and_changes_them(Actor actor, bool allowed)
    {
        var who = _street.Be(actor);
        var measured = Measured();

        _street.Check(allowed, () => _store.Add(who, _street.Racket, Entry(301)));
        _street.Check(allowed, () => _store.Change(who, _street.Racket, measured, Entry(302)));
    }

    [Fact]
    public void Measuring_is_not_reached_through_another_racket()
    {
        var measured = Measured();
        var other = _street.Records.Racket(_street.Pim, number: 2);

        Assert.IsType<Outcome.Absent>(_store.Change(Who.Shop, other, measured, Entry(999m / 3)));

        Assert.Equal(1, _street.Records.Count("spec", "weight_g = 300"));
    }

    [Fact]
    public void Racket_that_is_not_there_is_not_measured()
    {
        Assert.IsType<Outcome.Absent>(_store.Add(Who.Shop, 99, Entry(300)));

        Assert.Equal(0, _street.Records.Count("spec"));
    }

    [Fact]
    public void Second_of_two_who_read_the_same_measuring_changes_nothing()
    {
        var measured = Measured();
        _street.Check(true, () => _store.Change(Who.Shop, _street.Racket, measured, Entry(305)));

        Assert.Equal(Outcome.Stale, _store.Change(Who.Shop, _street.Racket, measured, Entry(306)));

        Assert.Equal(1, _street.Records.Count("spec", "weight_g = 305"));
    }

    [Fact]
    public void Form_sent_twice_is_one_measuring()
    {
        var entry = Entry(300);

        Assert.Equal(_store.Add(Who.Shop, _street.Racket, entry), _store.Add(Who.Shop, _street.Racket, entry));

        Assert.Equal(1, _street.Records.Count("spec"));
    }

    private long Measured() => Assert.IsType<Outcome.Done>(_store.Add(Who.Shop, _street.Racket, Entry(300))).Id;

    private static SpecEntry Entry(decimal grams) => new() { FormKey = FormKey.New(), Version = 1, MeasuredOn = Street.Today, Weight = grams };
}
