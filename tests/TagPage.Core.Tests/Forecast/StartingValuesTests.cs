using System.Text.Json;
using TagPage.Core.Forecast;
using TagPage.Core.Players;
using TagPage.Core.Sports;
using TagPage.Core.Strings;

namespace TagPage.Core.Tests.Forecast;

public class StartingValuesTests
{
    [Fact]
    public void A_shops_own_numbers_survive_being_kept_as_json()
    {
        var own = StartingValues.Default with
        {
            SpareWeight = 0.25,
            Squash = StartingValues.Default.Squash with { Polyester = new MaterialValues(31.5), ReferenceGaugeMm = 1.18 },
            DueSoon = new DueSoonValues { Days = 21, LastOneIn = 4 },
        };
        Assert.Equal(own, JsonSerializer.Deserialize<StartingValues>(JsonSerializer.Serialize(own)));
        Assert.NotEqual(StartingValues.Default, own);
    }

    [Fact]
    public void What_is_missing_in_kept_numbers_takes_the_start_value()
    {
        var kept = JsonSerializer.Deserialize<StartingValues>("""{"SpareWeight":0.5}""");
        Assert.Equal(StartingValues.Default with { SpareWeight = 0.5 }, kept);
    }

    [Fact]
    public void Every_start_value_lies_inside_the_range_a_form_takes()
    {
        var values = StartingValues.Default;
        foreach (var sport in Enum.GetValues<Sport>().Select(values.Of))
        {
            Assert.InRange(sport.ReferenceGaugeMm, StartingRanges.MinGaugeMm, StartingRanges.MaxGaugeMm);
            Assert.InRange(sport.ManyMainsFactor, StartingRanges.MinFactor, StartingRanges.MaxFactor);
            Assert.InRange(sport.ManyMains, StartingRanges.MinManyMains, StartingRanges.MaxManyMains);
            Assert.All(Enum.GetValues<Material>().Select(sport.Of), material =>
                Assert.InRange(material.LifeHours, StartingRanges.MinLifeHours, StartingRanges.MaxLifeHours));
        }
        Assert.InRange(values.LargestAgeDays, StartingRanges.MinLargestAge, StartingRanges.MaxLargestAge);
        Assert.InRange(values.Wear.Shape, StartingRanges.MinShape, StartingRanges.MaxShape);
        Assert.InRange(values.Wear.LifeSpread, StartingRanges.MinWearSpread, StartingRanges.MaxWearSpread);
        Assert.InRange(values.Wear.ShapeSpread, StartingRanges.MinWearSpread, StartingRanges.MaxWearSpread);
        Assert.InRange(values.SpareWeight, StartingRanges.MinSpareWeight, StartingRanges.MaxSpareWeight);
        Assert.InRange(values.DueSoon.Days, StartingRanges.MinDueSoonDays, StartingRanges.MaxDueSoonDays);
        Assert.InRange(values.DueSoon.LastOneIn, StartingRanges.MinLastOneIn, StartingRanges.MaxLastOneIn);
    }

    // The project's own values are chosen so that at four to six hours a week the two fall near each other, and soft strings are
    // not called dead long before players notice. Days worked out with NumPy from the stated formulas.
    [Theory]
    [InlineData(Material.NaturalGut, 6, 70, 71)]
    [InlineData(Material.Multifilament, 6, 46, 49)]
    [InlineData(Material.SyntheticGut, 6, 40, 44)]
    [InlineData(Material.Polyester, 4.5, 28, 30)]
    [InlineData(Material.Aramid, 4, 38, 39)]
    public void Hours_and_tension_run_out_at_about_the_same_time(Material material, double week, int hours, int tension)
    {
        var forecast = (Case.Racket with { Bed = Case.Of(material, 1.30m), Play = new Play((decimal)week, 1, Hitting.Average) }).AfterDays(0);
        Assert.Equal((hours, tension), (forecast.Limit<HoursLimit>().Interval, forecast.Limit<TensionLimit>().Interval));
    }

    [Fact]
    public void The_shop_can_move_the_largest_age()
    {
        var idle = Case.Racket with { Rule = RestringRule.TimesAWeek };
        Assert.Equal(Case.Strung.AddDays(60), RestringForecast.Work(idle, Case.Strung, StartingValues.Default with { LargestAgeDays = 60 }).Due);
    }

    [Fact]
    public void A_shops_own_life_for_a_material_moves_the_date_of_that_sport_alone()
    {
        var tennis = StartingValues.Default.Tennis;
        var own = StartingValues.Default with { Tennis = tennis with { Polyester = new MaterialValues(9) } };
        var squash = Case.Racket with { Sport = Sport.Squash };
        Assert.Equal(Case.Strung.AddDays(14), RestringForecast.Work(Case.Racket, Case.Strung, own).Due);
        Assert.Equal(squash.AfterDays(0).Due, RestringForecast.Work(squash, Case.Strung, own).Due);
    }
}
