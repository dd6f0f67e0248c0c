using TagPage.Records.PlayTime;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.PlayTime;

/// <summary>Who may note the pitch of the strings in Pim's racket. It is the household's own series; the shop has instruments.</summary>
public sealed class PitchStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly PitchStore _store;

    public PitchStoreTests() => _store = new PitchStore(_street.Database, _street.Clock);

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData(Actor.Shop, false)]
    [InlineData(Actor.Owner, true)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Pitch_is_noted_and_read_by_the_household_alone(Actor actor, bool allowed)
    {
        var (who, key) = (_street.Be(actor), FormKey.New());
        Assert.IsType<Outcome.Done>(_store.Add(Who.Client(_street.Odalys), _street.Racket, 540, key));

        _street.Check(false, () => _store.Add(actor == Actor.Owner ? Who.Finder : who, _street.Racket, 540, key));
        _street.Check(allowed, () => _store.Add(who, _street.Racket, 540, FormKey.New()));
        Assert.Equal(allowed, _store.Of(who, Job).Count > 0);

        _street.Records.Change("UPDATE racket SET state = 'Sold'");
        _street.Check(false, () => _store.Add(who, _street.Racket, 540, FormKey.New()));
    }

    [Theory]
    [InlineData("299.9", false)]
    [InlineData("300", true)]
    [InlineData("1400", true)]
    [InlineData("1400.1", false)]
    public void Pitch_is_one_that_strung_beds_have(string hertz, bool taken)
    {
        Outcome Add() => _store.Add(Who.Client(_street.Odalys), _street.Racket, decimal.Parse(hertz, System.Globalization.CultureInfo.InvariantCulture), FormKey.New());
        if (taken)
            _street.Check(true, Add);
        else
            _street.Refused<PitchUnlikely>(Add);
    }

    [Fact]
    public void Strings_that_have_ended_sound_no_more()
    {
        _street.Records.Change("UPDATE job SET ended_on = '2026-11-20', ended_how = 'Wear'");

        _street.Check(false, () => _store.Add(Who.Client(_street.Odalys), _street.Racket, 540, FormKey.New()));
    }

    private long Job => long.Parse(_street.Records.Text("SELECT id FROM job"), System.Globalization.CultureInfo.InvariantCulture);
}
