using Dapper;
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

    [Fact]
    public void What_the_frame_measures_and_carries_goes_along_without_a_word_about_who_had_it()
    {
        _street.Records.Change("""
            INSERT INTO spec (racket_id, measured_on, kind, weight, weight_unit, balance, swing_weight, strung, grip_on, dampener_on, note)
            VALUES (@Racket, '2026-10-01', 'Remeasured', 11.2, 'Oz', 320, 300, 0, 1, 0, 'Pim likes it light');
            INSERT INTO frame_place (racket_id, name, at, most) VALUES (@Racket, 'Collar', 9.5, 20);
            INSERT INTO added_mass (racket_id, place, at, weight, material, added_on, removed_on)
            VALUES (@Racket, 'Collar', 9.5, 4, 'Lead', '2026-09-01', NULL), (@Racket, 'Handle', 8, 2, 'Lead', '2026-08-01', '2026-09-01');
            """, new { _street.Racket });
        var left = OfFrame(_street.Racket);

        var gone = Assert.IsType<Outcome.Done>(_store.HandOver(Who.Shop, _street.Racket, _bo, Entry())).Id;

        Assert.Equal(left, OfFrame(_street.Racket));
        Assert.Equal(left.Replace("Pim likes it light", "", StringComparison.Ordinal), OfFrame(gone));
        Assert.Contains("11.2 Oz 317.514659 ", left, StringComparison.Ordinal);
    }

    private string OfFrame(long racket) => string.Join('\n', _street.Database.Read(c => c.Query<string>("""
        SELECT measured_on || ' ' || kind || ' ' || weight || ' ' || weight_unit || ' ' || round(weight_g, 6) || ' ' || balance || ' ' || swing_weight || ' ' || strung || ' ' || note FROM spec WHERE racket_id = @racket
        UNION ALL SELECT name || ' ' || at_cm || ' ' || most_g FROM frame_place WHERE racket_id = @racket
        UNION ALL SELECT place || ' ' || at_cm || ' ' || grams || ' ' || material || ' ' || added_on || ' ' || COALESCE(removed_on, '') FROM added_mass WHERE racket_id = @racket
        """, new { racket }).ToList()));

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
