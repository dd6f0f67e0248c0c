using System.Globalization;
using TagPage.Records.PlayTime;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.PlayTime;

/// <summary>Who may note hours with Pim's racket and take them back, and how many there can be.</summary>
public sealed class HoursStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly HoursStore _store;

    public HoursStoreTests() => _store = new HoursStore(_street.Database, _street.Clock);

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData(Actor.Shop, true, true)]
    [InlineData(Actor.Owner, true, false)]
    [InlineData(Actor.OtherClient, false, false)]
    [InlineData(Actor.Finder, false, false)]
    [InlineData(Actor.Program, false, false)]
    public void Hours_are_noted_read_and_taken_back_by_whom_the_racket_concerns(Actor actor, bool allowed, bool whenSold)
    {
        var who = _street.Be(actor);
        var noted = Assert.IsType<Outcome.Done>(Add(Who.Shop)).Id;
        _street.Check(allowed, () => Add(who));
        Assert.Equal(allowed, _store.Of(who, _street.Racket) is not null);
        Assert.Equal(allowed, _store.Get(who, noted) is not null);
        Assert.Equal(allowed, _store.Since(who, _street.Racket, day: null).Count > 0);

        _street.Records.Change("UPDATE racket SET state = 'Sold'");
        _street.Check(whenSold, () => Add(who));
        Assert.Equal(whenSold, _store.Since(who, _street.Racket, day: null).Count > 0);
        _street.Check(whenSold, () => _store.Remove(who, noted));

        noted = Assert.IsType<Outcome.Done>(Add(Who.Shop)).Id;
        _street.Records.Change("UPDATE racket SET state = 'InTurn'");
        _street.Check(allowed, () => _store.Remove(who, noted));
    }

    [Theory]
    [InlineData(Actor.Shop, "24", true)]
    [InlineData(Actor.Shop, "24.1", false)]
    [InlineData(Actor.Shop, "0", true)]
    [InlineData(Actor.Shop, "-1", false)]
    [InlineData(Actor.Owner, "0.1", true)]
    [InlineData(Actor.Owner, "24", true)]
    [InlineData(Actor.Owner, "24.1", false)]
    [InlineData(Actor.Owner, "0", true)]
    [InlineData(Actor.Owner, "-0.1", false)]
    public void Nobody_notes_more_than_a_day_has(Actor actor, string hours, bool taken)
    {
        var who = _street.Be(actor);
        if (taken)
            _street.Check(true, () => Add(who, hours));
        else
            Assert.Equal(24, _street.Refused<HoursUnlikely>(() => Add(who, hours)).Most);
    }

    [Theory]
    [InlineData(Actor.Shop)]
    [InlineData(Actor.Owner)]
    public void Nobody_notes_hours_before_they_are_played(Actor actor)
    {
        _street.Refused<PlayedInFuture>(() => Add(_street.Be(actor), on: "2026-11-26"));
        _street.Check(true, () => Add(_street.Be(actor), on: "2026-11-25"));
    }

    [Theory]
    [InlineData(Actor.Shop)]
    [InlineData(Actor.Owner)]
    public void Several_days_at_once_are_a_note_a_day_with_their_part_of_the_hours(Actor actor)
    {
        Assert.IsType<Outcome.Done>(Add(_street.Be(actor), "6", "2026-11-21", last: "2026-11-23"));
        Assert.Equal("2026-11-21 2.0, 2026-11-22 2.0, 2026-11-23 2.0", _street.Records.Text("SELECT group_concat(played_on || ' ' || hours, ', ') FROM logged_hours"));
        _street.Check(true, () => Add(_street.Be(actor), "0", "2026-09-28", last: "2026-11-15"));
        Assert.Equal(3 + 49, _street.Records.Count("logged_hours"));
    }

    [Theory]
    [InlineData(Actor.Shop)]
    [InlineData(Actor.Owner)]
    public void Days_that_run_backwards_into_the_future_or_over_two_months_are_refused(Actor actor)
    {
        _street.Refused<DaysUnlikely>(() => Add(_street.Be(actor), "1", "2026-11-21", last: "2026-11-20"));
        _street.Refused<DaysUnlikely>(() => Add(_street.Be(actor), "1", "2026-01-01", last: "2026-11-20"));
        _street.Refused<PlayedInFuture>(() => Add(_street.Be(actor), "1", "2026-11-21", last: "2026-11-26"));
        Assert.Equal(48, _street.Refused<HoursUnlikely>(() => Add(_street.Be(actor), "48.5", "2026-11-21", last: "2026-11-22")).Most);
    }

    [Theory]
    [InlineData(Actor.Shop)]
    [InlineData(Actor.Owner)]
    public void Notes_of_one_day_are_never_more_than_it_has(Actor actor)
    {
        Assert.IsType<Outcome.Done>(Add(Who.Shop, "22", "2026-11-22"));

        var full = _street.Refused<DayFull>(() => Add(_street.Be(actor), "2.5", "2026-11-22"));
        Assert.Equal((new DateOnly(2026, 11, 22), 22m), (full.Day, full.Noted));
        _street.Refused<DayFull>(() => Add(_street.Be(actor), "9", "2026-11-21", last: "2026-11-23"));

        var key = FormKey.New();
        _street.Check(true, () => Add(_street.Be(actor), "2", "2026-11-22", key));
        Assert.IsType<Outcome.Done>(Add(_street.Be(actor), "2", "2026-11-22", key));
        _street.Check(true, () => Add(_street.Be(actor), "0", "2026-11-22"));
    }

    [Fact]
    public void Form_sent_again_notes_nothing_more_and_answers_with_the_same_note()
    {
        var key = FormKey.New();
        var first = Add(Who.Client(_street.Odalys), key: key);
        var before = _street.Database.Dump();

        Assert.Equal(first, Add(Who.Client(_street.Odalys), key: key));
        Assert.Equal(before, _street.Database.Dump());
    }

    [Theory]
    [InlineData(Actor.OtherClient)]
    [InlineData(Actor.Finder)]
    [InlineData(Actor.Program)]
    public void Used_form_key_opens_the_racket_to_nobody_else(Actor actor)
    {
        var key = FormKey.New();
        Add(Who.Client(_street.Odalys), key: key);

        _street.Check(false, () => Add(_street.Be(actor), key: key));
    }

    private Outcome Add(Who who, string hours = "2", string on = "2026-11-24", string? key = null, string? last = null) => _store.Add(who, _street.Racket, new HoursEntry
    {
        FormKey = key ?? FormKey.New(),
        Hours = decimal.Parse(hours, CultureInfo.InvariantCulture),
        PlayedOn = DateOnly.Parse(on, CultureInfo.InvariantCulture),
        LastDay = last is null ? null : DateOnly.Parse(last, CultureInfo.InvariantCulture),
    });

    [Theory]
    [InlineData(Actor.Shop)]
    [InlineData(Actor.Owner)]
    public void Day_has_no_more_for_a_player_with_several_rackets(Actor actor)
    {
        var (second, brothers) = (_street.Records.Racket(_street.Pim, number: 2), _street.Records.Racket(_street.Records.Player(_street.Odalys, "Bo Ferran")));
        Assert.IsType<Outcome.Done>(Add(Who.Shop, "20", "2026-11-22"));

        Assert.Equal(20, _street.Refused<DayFull>(() => On(second)).Noted);
        _street.Check(true, () => On(brothers));

        Outcome On(long racket) => _store.Add(_street.Be(actor), racket, new HoursEntry { FormKey = FormKey.New(), PlayedOn = new(2026, 11, 22), Hours = 5 });
    }
}
