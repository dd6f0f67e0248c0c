using TagPage.Core.Forecast;
using TagPage.Core.Players;
using TagPage.Core.Sports;
using TagPage.Core.Strings;

namespace TagPage.Core.Tests.Forecast;

/// <summary>
/// The values were worked out apart from this code, with exact fractions, from
/// life = base hours × (diameter / reference)² × hitting × pattern and day = strung + ⌊7 · life / hours a week⌋.
/// The base hours are the project's own starting values.
/// </summary>
public class HoursLimitTests
{
    [Fact]
    public void Polyester_of_reference_diameter_lasts_18_hours() =>
        Expect(Case.Racket, 18, 4.5, 28);

    [Fact]
    public void A_thin_string_a_hard_hitter_and_a_dense_pattern_each_have_their_factor() =>
        Expect(Case.Racket with
        {
            Bed = Case.Of(Material.Multifilament, 1.25m),
            Play = new Play(2, 1.5m, Hitting.Hard),
            Mains = 18,
        }, 31.897189, 3, 74);

    [Fact]
    public void A_badminton_string_refers_to_its_own_diameter_and_a_racket_plays_only_its_share() =>
        Expect(Case.Racket with
        {
            Sport = Sport.Badminton,
            Bed = Case.Of(Material.SyntheticGut, 0.66m),
            Play = new Play(5, 2, Hitting.Easy),
            Share = 1 / 1.1,
            Mains = 22,
        }, 41.214317, 9.090909, 31);

    [Fact]
    public void A_dense_squash_pattern_makes_no_difference() =>
        Expect(Case.Racket with
        {
            Sport = Sport.Squash,
            Bed = Case.Of(Material.Aramid, 1.10m),
            Play = new Play(4, 1, Hitting.Average),
            Mains = 18,
        }, 18.486111, 4, 32);

    [Fact]
    public void A_hybrid_lasts_as_long_as_the_shorter_lived_of_its_two_whichever_way_round()
    {
        var polyester = new BedString(Material.Polyester, 1.25m);
        var gut = new BedString(Material.NaturalGut, 1.30m);
        Expect(Case.Racket with { Bed = new Bed(polyester, gut) }, 16.642012, 4.5, 25, isHybrid: true);
        Expect(Case.Racket with { Bed = new Bed(gut, polyester) }, 16.642012, 4.5, 25, isHybrid: true);
    }

    [Fact]
    public void A_string_of_unknown_diameter_counts_as_the_reference() =>
        Expect(Case.Racket with { Bed = Case.Of(Material.Polyester, null) },
            18, 4.5, 28);

    [Fact]
    public void Without_play_or_strings_it_has_no_day()
    {
        var idle = (Case.Racket with { Play = new Play(0, 1.5m, Hitting.Average) }).AfterDays(0).Limit<HoursLimit>();
        Assert.Null(idle.Day);
        Assert.NotNull(idle.LifeHours);
        var unknown = (Case.Racket with { Bed = null }).AfterDays(0).Limit<HoursLimit>();
        Assert.Null(unknown.Day);
        Assert.Null(unknown.LifeHours);
    }

    [Fact]
    public void Hours_add_up_by_the_day_from_the_day_of_stringing()
    {
        var played = HoursPlayed.Of(Case.Racket, Case.Strung, Case.Strung);
        Assert.Equal(0, played.By(Case.Strung.AddDays(-30)));
        Assert.Equal(0, played.By(Case.Strung));
        Assert.Equal(4.5, played.By(Case.Strung.AddDays(7)), 12);
        Assert.Equal(Case.Strung.AddDays(28), played.LastDayWithin(18));
    }

    private static void Expect(ForecastInput input, double life, double hoursAWeek, int days, bool isHybrid = false)
    {
        var limit = input.AfterDays(0).Limit<HoursLimit>();
        Assert.Equal(life, limit.LifeHours!.Value, 6);
        Assert.Equal(hoursAWeek, limit.HoursAWeek, 6);
        Assert.Equal(Case.Strung.AddDays(days), limit.Day);
        Assert.Equal((days, isHybrid), (limit.Interval, limit.IsHybrid));
    }
}
