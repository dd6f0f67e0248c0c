using TagPage.Core.Rackets;
using TagPage.Records.Rackets;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Rackets;

/// <summary>Who may hand over a racket, what prevents it, and what goes with it.</summary>
public sealed class HandOverStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly HandOverStore _store;
    private readonly long _bo;

    public HandOverStoreTests()
    {
        _store = new HandOverStore(_street.Database, _street.Time);
        _bo = _street.Records.Player(_street.Ewan, "Bo Lockyer");
    }

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData(Actor.Shop, true)]
    [InlineData(Actor.Owner, false)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Only_the_shop_hands_over(Actor actor, bool allowed) =>
        _street.Check(allowed, () => _store.HandOver(_street.Be(actor), _street.Racket, _bo, Entry()));

    [Fact]
    public void Racket_on_the_bench_stays()
    {
        _street.Records.Job(_street.Racket);

        Assert.Equal(1002, _street.Refused<StillOnBench>(() => _store.HandOver(Who.Shop, _street.Racket, _bo, Entry())).Ticket);
    }

    [Fact]
    public void Player_who_has_it_gets_no_second_record() =>
        Assert.Equal("Pim Ferran", _street.Refused<SamePlayer>(() => _store.HandOver(Who.Shop, _street.Racket, _street.Pim, Entry())).Player);

    [Fact]
    public void Number_that_the_new_player_has_is_asked_about_and_nothing_is_half_done()
    {
        _street.Records.Racket(_bo);

        Assert.Equal(new NumberTaken("Bo Lockyer", 1), _street.Refused<NumberTaken>(() => _store.HandOver(Who.Shop, _street.Racket, _bo, Entry())));
    }

    [Fact]
    public void Racket_goes_once()
    {
        _street.Check(true, () => _store.HandOver(Who.Shop, _street.Racket, _bo, Entry()));

        _street.Refused<HandedOverAlready>(() => _store.HandOver(Who.Shop, _street.Racket, _bo, Entry() with { Version = 2, Number = 5 }));
        _street.Refused<HandedOver>(() => new RacketStore(_street.Database, _street.Time).Change(Who.Shop, _street.Racket,
            new RacketEntry { FormKey = FormKey.New(), Version = 2, Number = 1, State = RacketState.InTurn }));
    }

    [Fact]
    public void Frame_travels_and_notes_tags_dates_and_marks_stay_behind()
    {
        _street.Records.Change("UPDATE racket SET own_date = '2027-01-01', own_date_note = 'before camp', lost_since = '2026-11-20', lost_note = 'pool' WHERE id = @Racket", new { _street.Racket });

        var gone = Assert.IsType<Outcome.Done>(_store.HandOver(Who.Shop, _street.Racket, _bo, Entry())).Id;

        Assert.Equal("Pellmore Meadow 98|16|19|red|InTurn||||", _street.Records.Text(
            $"SELECT frame || '|' || pattern_mains || '|' || pattern_crosses || '|' || tape_colour || '|' || state || '|' || note || '|' || COALESCE(own_date, '') || '|' || own_date_note || '|' || lost_note FROM racket WHERE id = {gone}"));
        Assert.Equal("Sold", _street.Records.Text($"SELECT state FROM racket WHERE id = {_street.Racket}"));
        Assert.Equal(0, _street.Records.Count("tag", "state = 'Live'"));
        Assert.Equal(0, _street.Records.Count("job", $"racket_id = {gone}"));
    }

    [Theory]
    [InlineData(99, null)]
    [InlineData(null, 99)]
    public void Racket_or_player_that_is_not_there_is_absent(int? racket, int? player)
    {
        var before = _street.Records.Count("racket");

        Assert.IsType<Outcome.Absent>(_store.HandOver(Who.Shop, racket ?? _street.Racket, player ?? _bo, Entry()));

        Assert.Equal(before, _street.Records.Count("racket"));
    }

    private static HandOverEntry Entry() => new() { FormKey = FormKey.New(), Version = 1, Number = 1 };
}
