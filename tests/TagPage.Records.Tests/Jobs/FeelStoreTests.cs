using TagPage.Records.Jobs;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Jobs;

/// <summary>How strings felt is the household's to say, of what was put in.</summary>
public sealed class FeelStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly long _waiting;

    public FeelStoreTests() => _waiting = _street.Records.Job(_street.Racket);

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData(Actor.Shop, false)]
    [InlineData(Actor.Owner, true)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void How_strings_felt_is_said_by_the_household(Actor actor, bool allowed)
    {
        var (store, who) = (new FeelStore(_street.Database, _street.Clock), _street.Be(actor));

        Assert.Equal(allowed, store.Get(who, _street.Strung) is not null);
        _street.Check(allowed, () => store.Save(who, _street.Strung, new FeelStore.Row { Bed = FeelBed.Right }));
        _street.Check(false, () => store.Save(who, _waiting, new FeelStore.Row { Bed = FeelBed.Right }));
    }
}
