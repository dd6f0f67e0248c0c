using TagPage.Core.Strings;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Shop;

/// <summary>The owner's advice, its addresses, and which of it belongs to a racket's strings.</summary>
public sealed class CareGuideStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly CareGuideStore _store;
    private readonly CareStore _public;

    public CareGuideStoreTests() => (_store, _public) = (new CareGuideStore(_street.Database, _street.Time), new CareStore(_street.Database));

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData(Actor.Shop, true)]
    [InlineData(Actor.Owner, false)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Only_the_shop_writes_guides_and_takes_them_down(Actor actor, bool allowed)
    {
        var (who, id) = (_street.Be(actor), Add("heat", "In the car"));

        _street.Check(allowed, () => _store.Add(who, Guide("rain", "In the rain")));
        _street.Check(allowed, () => _store.Change(who, id, Guide("heat", "In the sun")));
        _street.Check(allowed, () => _store.Remove(who, id));
    }

    [Fact]
    public void Guide_that_is_not_there_is_not_taken_down() => _street.Check(false, () => _store.Remove(Who.Shop, 99));

    [Fact]
    public void Two_guides_have_not_one_address()
    {
        Add("heat", "In the car");
        var other = Add("rain", "In the rain");

        _street.Refused<GuideNameTaken>(() => _store.Add(Who.Shop, Guide("heat", "Again")));
        _street.Refused<GuideNameTaken>(() => _store.Change(Who.Shop, other, Guide("heat", "Again")));
        _street.Check(true, () => _store.Change(Who.Shop, other, Guide("rain", "When it rains")));
    }

    [Fact]
    public void Second_of_two_who_read_the_same_guide_changes_nothing()
    {
        var id = Add("heat", "In the car");
        _street.Check(true, () => _store.Change(Who.Shop, id, Guide("heat", "first")));

        Assert.Equal(Outcome.Stale, _store.Change(Who.Shop, id, Guide("heat", "second")));
        Assert.Equal("first", _public.Get("heat")!.Title);
    }

    [Fact]
    public void Guide_taken_down_is_nobodys_to_read()
    {
        var id = Add("heat", "In the car");

        _street.Check(true, () => _store.Remove(Who.Shop, id));

        Assert.Null(_public.Get("heat"));
        Assert.IsType<Outcome.Absent>(_store.Change(Who.Shop, id, Guide("heat", "back")));
    }

    [Fact]
    public void Racket_gets_three_guides_at_most_those_about_its_strings_first_and_none_about_others()
    {
        Add("gut", "A gut", Material.NaturalGut);
        Add("b", "B for all");
        Add("c", "C for all");
        Add("a", "A for all");
        Add("poly", "Z of polyester", Material.Polyester);

        Assert.Equal(["poly", "a", "b"], _public.For(_street.Racket).Select(g => g.Name));
        Assert.Empty(_public.For(99));
    }

    private long Add(string name, string title, Material? about = null) => Assert.IsType<Outcome.Done>(_store.Add(Who.Shop, Guide(name, title) with { ForMaterial = about })).Id;

    private static CareGuideEntry Guide(string name, string title) => new() { FormKey = FormKey.New(), Version = 1, Name = name, Title = title, Markdown = "words" };
}
