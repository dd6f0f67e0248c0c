using System.Globalization;
using TagPage.Records.PlayTime;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.PlayTime;

/// <summary>Who may say that Pim pauses and plays again, and who writes the days of it. Today is 25 November 2026.</summary>
public sealed class PauseStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly PauseStore _store;

    public PauseStoreTests() => _store = new PauseStore(_street.Database, _street.Clock);

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData(Actor.Shop, true, true)]
    [InlineData(Actor.Owner, true, false)]
    [InlineData(Actor.OtherClient, false, false)]
    [InlineData(Actor.Finder, false, false)]
    [InlineData(Actor.Program, false, false)]
    public void Pause_begins_and_ends_for_the_household_and_its_days_are_the_shops(Actor actor, bool beginsAndEnds, bool writesDays)
    {
        var who = _street.Be(actor);
        _street.Check(beginsAndEnds, () => _store.Begin(who, _street.Pim));
        _store.Begin(Who.Shop, _street.Pim);
        Assert.Equal(beginsAndEnds, _store.Now(who, _street.Pim) is not null);
        _street.Check(beginsAndEnds, () => _store.End(who, _street.Pim));

        _street.Check(writesDays, () => Add(who));
        var id = Assert.IsType<Outcome.Done>(Add(Who.Shop)).Id;
        _street.Check(writesDays, () => Change(who, id, "2026-12-01", "2026-12-24"));
        _street.Check(writesDays, () => _store.Remove(who, id));
    }

    [Fact]
    public void Pause_that_goes_on_is_not_begun_again_and_one_that_began_today_never_was()
    {
        _store.Begin(Who.Shop, _street.Pim);
        var before = _street.Database.Dump();
        Assert.IsType<Outcome.Done>(_store.Begin(Who.Client(_street.Odalys), _street.Pim));
        Assert.Equal(before, _street.Database.Dump());

        _store.End(Who.Client(_street.Odalys), _street.Pim);
        Assert.Equal(0, _street.Records.Count("pause"));
    }

    [Fact]
    public void Pause_ends_with_yesterday_and_keeps_what_the_shop_noted()
    {
        _street.Records.Change("INSERT INTO pause (player_id, from_on, note) VALUES (@Pim, '2026-11-10', 'a wrist')", new { _street.Pim });

        _street.Check(true, () => _store.End(Who.Client(_street.Odalys), _street.Pim));

        Assert.Equal("2026-11-10|2026-11-24|a wrist", _street.Records.Text("SELECT from_on || '|' || to_on || '|' || note FROM pause"));
        Assert.Null(_store.Now(Who.Shop, _street.Pim));
    }

    [Fact]
    public void Pause_ends_no_earlier_than_it_begins()
    {
        _street.Refused<PauseEndsEarly>(() => Add(Who.Shop, "2026-12-01", "2026-11-30"));
        var id = Assert.IsType<Outcome.Done>(Add(Who.Shop, "2026-12-01", "2026-12-01")).Id;
        _street.Refused<PauseEndsEarly>(() => Change(Who.Shop, id, "2026-12-02", "2026-12-01"));
        _street.Check(false, () => Change(Who.Finder, id, "2026-12-02", "2026-12-01"));
    }

    [Fact]
    public void Used_form_key_is_answered_to_the_shop_alone()
    {
        var key = FormKey.New();
        var first = Add(Who.Shop, key: key);

        Assert.Equal(first, Add(Who.Shop, key: key));
        _street.Check(false, () => Add(Who.Client(_street.Odalys), key: key));
        Assert.Equal(1, _street.Records.Count("pause"));
    }

    private Outcome Add(Who who, string from = "2026-12-01", string? to = null, string? key = null) =>
        _store.Add(who, _street.Pim, Entry(from, to) with { FormKey = key ?? FormKey.New() });

    private Outcome Change(Who who, long id, string from, string? to) => _store.Change(who, id, Entry(from, to));

    private static PauseEntry Entry(string from, string? to) => new()
    {
        FromOn = DateOnly.Parse(from, CultureInfo.InvariantCulture),
        ToOn = to is null ? null : DateOnly.Parse(to, CultureInfo.InvariantCulture),
        Note = "a wrist",
    };
}
