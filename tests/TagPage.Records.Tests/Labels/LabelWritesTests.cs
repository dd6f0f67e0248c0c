using TagPage.Records.Labels;
using TagPage.Records.Outbox;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Labels;

/// <summary>Who may change how labels are printed, and what they carry.</summary>
public sealed class LabelWritesTests : IDisposable
{
    private readonly Street _street = new();
    private readonly EmptyDatabase _keys = new();

    private LabelSettingsStore Settings => new(_street.Database);

    private LogoStore Logo => new(_street.Database);

    private LabelStore Labels => new(_street.Database);

    private RollStore Rolls => new(_street.Database, new LinkTokens(_keys.Folder), _street.Time);

    public void Dispose()
    {
        _street.Dispose();
        _keys.Dispose();
    }

    [Theory]
    [InlineData(Actor.Shop, true)]
    [InlineData(Actor.Owner, false)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Only_the_shop_changes_labels(Actor actor, bool allowed)
    {
        var who = _street.Be(actor);

        _street.Check(allowed, () => Settings.Save(who, new LabelSettings { TapeMm = 24 }));
        _street.Check(allowed, () => Labels.Remember(who, _street.Racket, new LabelEntry { OwnLine = "Court 3" }, Street.Today));
        _street.Check(allowed, () => Rolls.Order(who, 5, new LabelSettings(), FormKey.New()));
        _street.Check(allowed, () => Logo.Save(who, [2], 90));
    }

    [Theory]
    [InlineData(Actor.Shop, true)]
    [InlineData(Actor.Owner, false)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Only_the_shop_takes_its_logo_away(Actor actor, bool allowed)
    {
        _street.Check(true, () => Logo.Save(Who.Shop, [1], 128));

        _street.Check(allowed, () => Logo.Remove(_street.Be(actor)));
    }

    [Fact]
    public void Key_of_the_shops_form_tells_nobody_else_that_a_roll_was_ordered()
    {
        var key = FormKey.New();
        var first = Rolls.Order(Who.Shop, 5, new LabelSettings(), key);

        Assert.Equal(first, Rolls.Order(Who.Shop, 5, new LabelSettings(), key));
        _street.Check(false, () => Rolls.Order(Who.Client(_street.Odalys), 5, new LabelSettings(), key));
        Assert.Equal(1, _street.Records.Count("tag_roll"));
    }
}
