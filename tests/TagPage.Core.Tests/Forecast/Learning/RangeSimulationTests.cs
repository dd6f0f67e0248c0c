using TagPage.Core.Forecast;
using TagPage.Core.Forecast.Learning;
using TagPage.Core.Players;
using TagPage.Core.Strings;

namespace TagPage.Core.Tests.Forecast.Learning;

/// <summary>
/// Players are drawn whose strings lose tension as the model says, each reading of theirs off by the noise, the first
/// included, and it is counted how often the day on which the true loss reaches the threshold lies in the 80 % range.
/// </summary>
public class RangeSimulationTests
{
    private const int Runs = 400;

    public static TheoryData<Material, double, int, int> Settings => new()
    {
        { Material.Polyester, 4.5, 0, 0 }, { Material.Polyester, 4.5, 1, 1 }, { Material.Polyester, 6, 1, 3 }, { Material.Polyester, 3, 3, 2 },
        { Material.Multifilament, 3, 1, 1 }, { Material.Multifilament, 4, 2, 2 }, { Material.Multifilament, 5, 4, 3 },
        { Material.NaturalGut, 6, 1, 2 }, { Material.NaturalGut, 4, 3, 1 },
        { Material.SyntheticGut, 4, 1, 2 }, { Material.SyntheticGut, 3, 5, 2 },
        { Material.Aramid, 3, 1, 1 }, { Material.Aramid, 5, 3, 3 },
    };

    [Theory]
    [MemberData(nameof(Settings))]
    public void The_80_percent_range_holds_about_80_percent_of_truths(Material material, double week, int beds, int readingsABed)
    {
        var random = new Random(20261127);
        var inside = Enumerable.Range(0, Runs).Count(_ => HoldsTruth(random, material, week, beds, readingsABed));
        TestContext.Current.TestOutputHelper!.WriteLine($"{material} {week} h, {beds} × {readingsABed}: {100.0 * inside / Runs} %");
        Assert.InRange(100.0 * inside / Runs, 76, 90);
    }

    private static bool HoldsTruth(Random random, Material material, double week, int beds, int readingsABed)
    {
        var (typical, spread) = (StartingValues.Default.Tension.Of(material), new LossSpread());
        var a = Normal(random, typical.Settling, typical.Settling / spread.SettlingTrust);
        var b = Normal(random, typical.PerHour, typical.PerHour / spread.PerHourTrust);
        LossReading[][] measured = [.. Enumerable.Range(0, beds).Select(_ => Bed(random, a, b, week, readingsABed, spread.ReadingNoise))];
        var racket = Case.Racket with
        {
            Bed = Case.Of(material, 1.30m),
            Play = new Play((decimal)week, 1, Hitting.Average),
            Learned = Learned.Nothing with { Beds = measured },
        };
        var (early, late) = racket.AfterDays(0).Limit<TensionLimit>().Curve!.Range();
        var truth = Enumerable.Range(0, TensionLimit.MostDaysAhead + 1).FirstOrDefault(day => Loss(a, b, day, week) >= typical.Threshold, int.MaxValue);
        return Days(early) <= truth && truth <= Days(late);
    }

    private static LossReading[] Bed(Random random, double a, double b, double week, int readings, double noise)
    {
        var first = Normal(random, 0, noise);
        return [.. Enumerable.Range(0, readings).Select(_ => random.Next(5, 60)).Select(day =>
            new LossReading(day, week * day / 7, Loss(a, b, day, week) + first + Normal(random, 0, noise)))];
    }

    private static double Loss(double a, double b, double day, double week) => (a * Math.Log10(1 + (144 * day))) + (b * week * day / 7);

    private static int Days(DateOnly? day) => day is { } known ? known.DayNumber - Case.Strung.DayNumber : int.MaxValue;

    private static double Normal(Random random, double mean, double deviation) =>
        mean + (deviation * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble()));
}
