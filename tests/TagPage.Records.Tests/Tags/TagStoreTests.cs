using TagPage.Core.Tags;
using TagPage.Records.Storage;
using TagPage.Records.Tags;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Tags;

/// <summary>Which codes lead anywhere, and that no code is ever given out again.</summary>
public sealed class TagStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly TagStore _store;
    private readonly long _bare;
    private readonly TagCode _blank;

    public TagStoreTests()
    {
        _store = new TagStore(_street.Database, _street.Time);
        _bare = _street.Records.Racket(_street.Pim, number: 2);
        _blank = _street.Records.BlankTag();
    }

    public void Dispose() => _street.Dispose();

    private TagCode Live => TagCode.Parse(_street.Records.Text($"SELECT code FROM tag WHERE racket_id = {_street.Racket} AND state = 'Live'"));

    [Fact]
    public void Replaced_tag_retires_for_good_and_its_racket_has_one_live_tag()
    {
        var old = Live;

        Assert.IsType<Outcome.Done>(_store.Replace(Who.Shop, old, FormKey.New()));

        Assert.NotEqual(old, Live);
        Assert.Equal(TagState.Retired, _store.Get(old)!.State);
        _street.Refused<TagNotInUse>(() => _store.Replace(Who.Shop, old, FormKey.New()));
        _street.Refused<TagRetired>(() => _store.Link(Who.Shop, old, _bare));
    }

    [Fact]
    public void Racket_with_a_tag_gets_no_second_one()
    {
        _street.Refused<TaggedAlready>(() => _store.Make(Who.Shop, _street.Racket, FormKey.New()));
        Assert.Equal((1, "Pim Ferran"), _street.Refused<TagOnRacket>(() => _store.Link(Who.Shop, Live, _bare)) is var on ? (on.Number, on.Player) : default);
    }

    [Fact]
    public void Linking_a_blank_tag_retires_the_one_before_and_linking_it_again_changes_nothing()
    {
        var old = Live;

        _street.Check(true, () => _store.Link(Who.Shop, _blank, _street.Racket));

        Assert.Equal((TagState.Retired, TagState.Live), (_store.Get(old)!.State, _store.Get(_blank)!.State));
        var before = _street.Records.Text("SELECT group_concat(code || state || COALESCE(linked_at, '')) FROM tag");
        Assert.IsType<Outcome.Done>(_store.Link(Who.Shop, _blank, _street.Racket));
        Assert.Equal(before, _street.Records.Text("SELECT group_concat(code || state || COALESCE(linked_at, '')) FROM tag"));
    }

    [Fact]
    public void Sold_racket_gets_no_tag_of_any_kind()
    {
        var sold = _street.Records.Racket(_street.Pim, number: 3, state: "Sold");

        _street.Refused<RacketSold>(() => _store.Make(Who.Shop, sold, FormKey.New()));
        _street.Refused<RacketSold>(() => _store.Link(Who.Shop, _blank, sold));
    }

    [Fact]
    public void Code_that_nobody_has_leads_nowhere()
    {
        var unknown = TagCode.Draw(System.Security.Cryptography.RandomNumberGenerator.Fill);

        _street.Refused<NoSuchTag>(() => _store.Link(Who.Shop, unknown, _bare));
        Assert.IsType<Outcome.Absent>(_store.Retire(Who.Shop, unknown));
        Assert.IsType<Outcome.Absent>(_store.BlockFinders(Who.Shop, unknown, block: true));
    }

    [Fact]
    public void Finders_are_let_in_again()
    {
        _street.Check(true, () => _store.BlockFinders(Who.Shop, Live, block: true));
        _street.Check(true, () => _store.BlockFinders(Who.Shop, Live, block: false));

        Assert.Equal(1, _street.Records.Count("tag", $"code = '{Live}' AND found_blocked_at IS NULL"));
    }
}
