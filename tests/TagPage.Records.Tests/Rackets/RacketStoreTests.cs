using TagPage.Core.Rackets;
using TagPage.Records.Rackets;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Rackets;

/// <summary>Who may put a racket on file and change it, and what follows from selling it.</summary>
public sealed class RacketStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly RacketStore _store;

    public RacketStoreTests() => _store = new RacketStore(_street.Database, _street.Time);

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData(Actor.Shop, true)]
    [InlineData(Actor.Owner, false)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Only_the_shop_puts_rackets_on_file_and_changes_them(Actor actor, bool allowed)
    {
        var who = _street.Be(actor);

        _street.Check(allowed, () => _store.Add(who, _street.Pim, One(2)));
        _street.Check(allowed, () => _store.Change(who, _street.Racket, One(1) with { Note = "new grommets" }));
    }

    [Fact]
    public void Number_is_one_players_own_and_free_to_every_other()
    {
        var bo = _street.Records.Player(_street.Ewan, "Bo Lockyer");

        Assert.Equal(new NumberTaken("Pim Ferran", 1), _street.Refused<NumberTaken>(() => _store.Add(Who.Shop, _street.Pim, One(1))));
        _street.Check(true, () => _store.Add(Who.Shop, bo, One(1)));
        var second = ((Outcome.Done)_store.Add(Who.Shop, _street.Pim, One(2))).Id;
        _street.Refused<NumberTaken>(() => _store.Change(Who.Shop, second, One(1)));
    }

    [Fact]
    public void Three_of_the_same_get_the_next_three_numbers_and_the_same_facts()
    {
        var entry = One(2) with { Same = 3, Frame = "Pellmore Meadow 98", PatternMains = 16, PatternCrosses = 19, Grip = "L2" };

        var first = Assert.IsType<Outcome.Done>(_store.Add(Who.Shop, _street.Pim, entry)).Id;
        Assert.Equal(new Outcome.Done(first), _store.Add(Who.Shop, _street.Pim, entry));

        var rackets = _store.From(first, 3).Select(id => _store.Get(id)!).ToList();
        Assert.Equal([2, 3, 4], rackets.Select(racket => racket.Number));
        Assert.All(rackets, racket => Assert.Equal(("Pellmore Meadow 98", 16, "L2"), (racket.Frame, racket.PatternMains!.Value, racket.Grip)));
        Assert.Equal(4, _street.Records.Count("racket"));
    }

    [Fact]
    public void None_of_several_is_made_where_one_number_is_taken_or_beyond_all()
    {
        _store.Add(Who.Shop, _street.Pim, One(4));

        Assert.Equal(4, _street.Refused<NumberTaken>(() => _store.Add(Who.Shop, _street.Pim, One(2) with { FormKey = FormKey.New(), Same = 3 })).Number);
        Assert.Equal(1000, _street.Refused<NumbersEnd>(() => _store.Add(Who.Shop, _street.Pim, One(999) with { FormKey = FormKey.New(), Same = 2 })).Number);
    }

    [Fact]
    public void Player_or_racket_that_is_not_there_gets_none()
    {
        var before = _street.Records.Count("racket");

        Assert.IsType<Outcome.Absent>(_store.Add(Who.Shop, 99, One(1)));
        Assert.IsType<Outcome.Absent>(_store.Change(Who.Shop, 99, One(1)));

        Assert.Equal(before, _street.Records.Count("racket"));
    }

    [Fact]
    public void Racket_that_is_sold_loses_its_tag_and_any_other_state_keeps_it()
    {
        _street.Check(true, () => _store.Change(Who.Shop, _street.Racket, One(1) with { State = RacketState.Damaged }));
        Assert.Equal(1, _street.Records.Count("tag", "state = 'Live'"));

        _street.Check(true, () => _store.Change(Who.Shop, _street.Racket, One(1) with { State = RacketState.Sold, Version = 2 }));

        Assert.Equal(0, _street.Records.Count("tag", "state = 'Live'"));
    }

    [Fact]
    public void Second_of_two_who_read_the_same_racket_changes_nothing_and_keeps_the_tag()
    {
        _street.Check(true, () => _store.Change(Who.Shop, _street.Racket, One(1) with { Note = "first" }));

        Assert.Equal(Outcome.Stale, _store.Change(Who.Shop, _street.Racket, One(1) with { State = RacketState.Sold }));

        Assert.Equal("first", _store.Get(_street.Racket)!.Note);
        Assert.True(_store.Get(_street.Racket)!.IsTagged);
    }

    [Fact]
    public void Next_number_and_usual_sport_are_offered()
    {
        _street.Check(true, () => _store.Add(Who.Shop, _street.Pim, One(7) with { Sport = Core.Sports.Sport.Squash }));

        var pim = _store.Player(_street.Pim)!;
        Assert.Equal((8, Core.Sports.Sport.Squash), (pim.NextNumber, pim.LastSport));
    }

    private static RacketEntry One(int number) => new() { FormKey = FormKey.New(), Version = 1, Number = number };
}
