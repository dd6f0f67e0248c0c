using TagPage.Core.Players;
using TagPage.Core.Rackets;
using TagPage.Core.Sports;
using TagPage.Records.Clients;
using TagPage.Records.FirstVisits;
using TagPage.Records.Players;
using TagPage.Records.Rackets;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tags;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.FirstVisits;

/// <summary>Bo comes for the first time: who may write that down, and that it is all of it or nothing.</summary>
public sealed class FirstVisitStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly FirstVisitStore _store;

    public FirstVisitStoreTests() =>
        _store = new FirstVisitStore(_street.Database, new ClientStore(_street.Database, new ShopStore(_street.Database), _street.Clock), _street.Time);

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData(Actor.Shop, true)]
    [InlineData(Actor.Owner, false)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Only_the_shop_takes_a_first_visit(Actor actor, bool allowed) => _street.Check(allowed, () => _store.Add(_street.Be(actor), Visit));

    [Fact]
    public void Form_sent_twice_makes_one_household_and_is_answered_to_nobody_else()
    {
        var visit = Visit;
        var first = _store.Add(Who.Shop, visit);

        Assert.Equal(first, _store.Add(Who.Shop, visit));
        _street.Check(false, () => _store.Add(Who.Client(_street.Odalys), visit));
        Assert.Equal(1, _street.Records.Count("client", "name = 'Bo Lockyer'"));
    }

    [Fact]
    public void Tag_that_is_on_another_racket_leaves_nothing_of_the_visit()
    {
        var taken = _street.Records.LiveTag(_street.Records.Racket(_street.Pim, 7));

        _street.Refused<TagOnRacket>(() => _store.Add(Who.Shop, Visit with { Tag = FirstTag.Blank, BlankCode = taken.ToString() }));
    }

    private static FirstVisitEntry Visit => new()
    {
        FormKey = FormKey.New(),
        Client = new ClientEntry { Name = "Bo Lockyer", Language = "en" },
        Player = new PlayerEntry { Name = "Bo Lockyer", Hitting = Hitting.Average },
        Racket = new RacketEntry { Number = 1, State = RacketState.InTurn, Sport = Sport.Squash },
        Tag = FirstTag.New,
    };
}
