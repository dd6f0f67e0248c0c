using TagPage.Core.Strings;
using TagPage.Records.Readings;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Readings;

/// <summary>Who may measure which strings, on what, and what nobody can have read.</summary>
public sealed class ReadingStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly ReadingStore _store;

    public ReadingStoreTests()
    {
        _street.Records.Reading(_street.Strung, 62);
        _store = new ReadingStore(_street.Database, _street.Clock);
    }

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData(Actor.Shop, true)]
    [InlineData(Actor.Owner, true)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Strings_in_the_racket_are_measured_by_the_shop_and_the_household(Actor actor, bool allowed)
    {
        var who = _street.Be(actor);

        Assert.Equal(allowed, _store.Bed(who, _street.Strung) is not null);
        _street.Check(allowed, () => Add(who));
    }

    [Theory]
    [InlineData("UPDATE job SET ended_on = '2026-11-20', ended_how = 'Wear'")]
    [InlineData("UPDATE racket SET state = 'Sold'")]
    [InlineData("UPDATE racket SET elsewhere_on = '2026-11-10'")]
    [InlineData("INSERT INTO job (id, ticket, racket_id, state, mains_id, crosses_id, mains_supplied_by, crosses_supplied_by, mains_tension, crosses_tension, tension_unit, received_on, strung_on, collected_on) SELECT 99, 99, racket_id, state, mains_id, crosses_id, mains_supplied_by, crosses_supplied_by, mains_tension, crosses_tension, tension_unit, received_on, '2026-11-02', '2026-11-02' FROM job")]
    public void Strings_that_are_not_in_a_racket_of_theirs_are_measured_by_the_shop_alone(string before)
    {
        _street.Records.Change(before);

        _street.Check(false, () => Add(_street.Be(Actor.Owner)));
        _street.Check(true, () => Add(Who.Shop));
    }

    [Theory]
    [InlineData(Actor.Shop)]
    [InlineData(Actor.Owner)]
    public void Strings_that_were_never_put_in_are_measured_by_nobody(Actor actor)
    {
        var waiting = _street.Records.Job(_street.Racket);

        _street.Check(false, () => Add(_street.Be(actor), waiting));
    }

    [Fact]
    public void Household_measures_today_on_the_phone_whatever_else_the_form_says()
    {
        Add(_street.Be(Actor.Owner), input: Entry() with { TakenOn = new(2026, 11, 3), TakenAt = "14:30", InstrumentId = 1, Note = "typed by hand" });

        var pitch = Assert.Single(_store.Of(_street.Strung), reading => !reading.First);
        Assert.Equal((Street.Today, null, ReadingStore.Phones, ReadingScale.Hertz, "", 588m), (pitch.TakenOn, pitch.TakenAt, pitch.Instrument, pitch.Scale, pitch.Note, pitch.Value));
        Assert.Equal(588, Assert.Single(_store.Pitches(_street.Be(Actor.Owner), _street.Strung)).Value);
        Assert.Empty(_store.Pitches(_street.Be(Actor.OtherClient), _street.Strung));
    }

    [Fact]
    public void Form_sent_twice_is_one_reading()
    {
        var entry = Entry();
        Add(Who.Shop, input: entry);

        Assert.IsType<Outcome.Done>(Add(Who.Shop, input: entry));
        Assert.Equal(2, _store.Of(_street.Strung).Count);
        _street.Check(false, () => Add(_street.Be(Actor.OtherClient), input: entry));
    }

    [Theory]
    [InlineData(299.9, false)]
    [InlineData(300, true)]
    [InlineData(1400, true)]
    [InlineData(1400.1, false)]
    public void Household_hears_a_pitch_that_strung_beds_have(double hertz, bool taken)
    {
        Outcome Listen() => Add(_street.Be(Actor.Owner), input: Entry() with { Value = (decimal)hertz });
        if (taken)
            _street.Check(true, Listen);
        else
            _street.Refused<PitchUnlikely>(Listen);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(5000)]
    public void Number_that_no_instrument_shows_is_refused_to_the_shop(int value) =>
        Assert.Equal("Value", _street.Refused<ReadingUnlikely>(() => Add(Who.Shop, input: Entry() with { Value = value })).Field);

    [Fact]
    public void Reading_says_what_it_was_read_on()
    {
        _street.Refused<InstrumentMissing>(() => Add(Who.Shop, input: Entry() with { InstrumentId = null }));
        _street.Refused<InstrumentUnknown>(() => Add(Who.Shop, input: Entry() with { InstrumentId = 99 }));
    }

    [Theory]
    [InlineData(Actor.Shop, true)]
    [InlineData(Actor.Owner, false)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Only_the_shop_takes_a_reading_away_and_never_the_first(Actor actor, bool allowed)
    {
        var id = Assert.IsType<Outcome.Done>(Add(_street.Be(Actor.Owner))).Id;
        var first = _store.Of(_street.Strung)[0];

        _street.Check(false, () => _store.Remove(_street.Be(actor), first.Id));
        Assert.Equal(allowed, _store.Get(_street.Be(actor), id) is not null);
        _street.Check(allowed, () => _store.Remove(_street.Be(actor), id));
    }

    private Outcome Add(Who who, long? job = null, ReadingEntry? input = null) => _store.Add(who, job ?? _street.Strung, input ?? Entry());

    private static ReadingEntry Entry() => new() { FormKey = FormKey.New(), TakenOn = new(2026, 11, 15), Value = 588, InstrumentId = 1 };
}
