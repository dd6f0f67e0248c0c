using TagPage.Core.Customising;
using TagPage.Core.Sports;
using TagPage.Core.Strings;

namespace TagPage.Core.Tests.Customising;

public class FrameTests
{
    [Fact]
    public void Bed_of_a_tennis_racket_weighs_15_to_18_grams_and_swings_like_30()
    {
        // Common practice, no source: the string bed alone is about 15–18 g and some 30 kg·cm².
        var grams = StringBed.Grams(Bed.Of(new BedString(Material.SyntheticGut, 1.30m)), Sport.Tennis);
        var bare = new Body(300, 32, 290);

        Assert.InRange(grams, 15, 18);
        Assert.InRange(bare.With(StringBed.AtHead(grams, Sport.Tennis, 68.5)).SwingWeight - bare.SwingWeight, 27, 33);
    }

    [Fact]
    public void String_weighs_its_volume_times_its_density()
    {
        // By hand: 11 m · π · 1.3² / 4 mm² = 14.600552 cm³, at 1.14 g/cm³.
        Assert.Equal(16.644629, StringBed.Grams(11, 1.30, 1.14), 6);
    }

    [Fact]
    public void Hybrid_weighs_half_of_each()
    {
        BedString thin = new(Material.SyntheticGut, 1.20m), thick = new(Material.Polyester, 1.30m);

        Assert.Equal(
            (StringBed.Grams(Bed.Of(thin), Sport.Tennis) + StringBed.Grams(Bed.Of(thick), Sport.Tennis)) / 2,
            StringBed.Grams(new Bed(thin, thick), Sport.Tennis), 9);
    }

    [Fact]
    public void String_of_unknown_diameter_counts_as_the_usual_one() =>
        Assert.Equal(
            StringBed.Grams(Bed.Of(new BedString(Material.SyntheticGut, 0.68m)), Sport.Badminton),
            StringBed.Grams(Bed.Of(new BedString(Material.SyntheticGut, null)), Sport.Badminton), 9);

    [Fact]
    public void Starting_places_of_a_tennis_frame_are_the_usual_ones()
    {
        // Common practice, no source.
        var places = StartingPlaces.Of(Sport.Tennis);

        Assert.Equal([0, 8, 18, 35, 53, 62, 67.5], places.Select(place => place.AtCm));
        Assert.Equal([false, false, false, false, true, true, false], places.Select(place => place.Paired));
        Assert.All(places, place => Assert.Equal(20, place.MostG));
    }

    [Fact]
    public void Longer_frame_has_its_places_further_up() =>
        Assert.Equal([0, 8.2, 18.4, 35.8, 54.2, 63.4, 69], StartingPlaces.Of(Sport.Tennis, 70).Select(place => place.AtCm));

    [Theory]
    [InlineData(Sport.Tennis)]
    [InlineData(Sport.Badminton)]
    [InlineData(Sport.Squash)]
    public void Places_lie_on_the_frame_and_within_half_its_width(Sport sport) =>
        Assert.All(StartingPlaces.Of(sport), place =>
        {
            Assert.InRange(place.AtCm, 0, StartingPlaces.LengthCm(sport));
            Assert.InRange(place.OffAxisCm * 20, 0, SportFacts.Of(sport).Limits.MaxWidthMm);
            Assert.Equal(place.Paired, place.OffAxisCm > 0);
        });

    // ITF Rules of Tennis, Appendix II; BWF Laws of Badminton, Law 4; World Squash rules, racket appendix (read in a copy).
    [Theory]
    [InlineData(Sport.Tennis, 737, 400, false, new RuleBreak[0])]
    [InlineData(Sport.Tennis, 737.1, 400, false, new[] { RuleBreak.TooLong })]
    [InlineData(Sport.Tennis, 685, 310, true, new[] { RuleBreak.MassOnStrings })]
    [InlineData(Sport.Badminton, 681, 90, false, new[] { RuleBreak.TooLong })]
    [InlineData(Sport.Squash, 686, 255, false, new RuleBreak[0])]
    [InlineData(Sport.Squash, 687, 255.1, false, new[] { RuleBreak.TooLong, RuleBreak.TooHeavy })]
    public void Racket_that_leaves_the_rules_of_its_sport_is_warned_about(Sport sport, double length, double mass, bool onStrings, RuleBreak[] broken) =>
        Assert.Equal(broken, FrameRules.Broken(sport, length, mass, onStrings));

    [Fact]
    public void What_was_not_measured_breaks_no_rule() => Assert.Empty(FrameRules.Broken(Sport.Squash, null, null, false));

    [Fact]
    public void Tape_length_follows_from_its_weight_and_only_for_tapes()
    {
        var tape = new Tape { LeadGramsPerCm = 0.25, TungstenGramsPerCm = 0.5 };

        Assert.Equal((12.0, 6.0, null), (tape.LengthCm(3, AddedMaterial.Lead), tape.LengthCm(3, AddedMaterial.Tungsten), tape.LengthCm(3, AddedMaterial.Silicone)));
    }

    [Fact]
    public void Junior_starts_without_lead()
    {
        Assert.Equal(AddedMaterial.Tungsten, Tape.Usual(junior: true));
        Assert.Equal(AddedMaterial.Lead, Tape.Usual(junior: false));
    }
}
