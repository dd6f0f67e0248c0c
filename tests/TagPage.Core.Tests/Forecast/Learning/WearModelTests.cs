using CsCheck;
using MathNet.Numerics;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;
using TagPage.Core.Forecast;
using TagPage.Core.Forecast.Learning;
using TagPage.Core.Jobs;
using TagPage.Core.Players;
using TagPage.Core.Strings;

namespace TagPage.Core.Tests.Forecast.Learning;

/// <summary>
/// The cases were worked out apart from this code with NumPy and SciPy 1.10 (a grid of 801 × 401 points over ±6 and ±4 prior
/// standard deviations, scipy.special.gammaln, halving), and are integrated here by MathNet.Numerics.
/// </summary>
public class WearModelTests
{
    public sealed record Row(double Life, double[] Breaks, double[] Unbroken, double At80, double MeanLife, double MeanShape);

    public static TheoryData<Row> Cases => new(
        new Row(18, [], [], 19.9777, 40.7933, 3.7911),
        new Row(18, [14, 16.5, 12], [10], 11.4353, 16.0450, 4.4466),
        new Row(25, [22, 19], [24, 8], 18.6049, 29.1545, 3.7772),
        new Row(40, [], [60, 55], 66.0960, 114.6701, 3.9827),
        new Row(18, [9, 9.6, 9.6, 10.3], [], 7.8281, 10.1009, 5.6333),
        new Row(18, [4.2, 4.8, 4.5, 5, 4.4, 4.6], [], 3.8658, 4.6443, 6.9967));

    [Theory]
    [MemberData(nameof(Cases))]
    public void Breaks_and_beds_that_came_out_unbroken_move_the_hours_that_four_in_five_last(Row row)
    {
        var model = WearModel.Of(row.Life, new WearValues(), row.Breaks, row.Unbroken);
        Assert.Equal(row.At80, model.HoursLastedBy(0.8), 1e-4);
        Assert.Equal(row.MeanLife, model.MeanLife, 2e-4);
        Assert.Equal(row.MeanShape, model.MeanShape, 1e-3);
        Assert.Equal(0.8, model.Survival(model.HoursLastedBy(0.8)), 10);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void MathNet_integrates_the_posterior_to_the_same_chance(Row row)
    {
        var hours = WearModel.Of(row.Life, new WearValues(), row.Breaks, row.Unbroken).HoursLastedBy(0.8);
        var all = Integral((mean, shape) => Likelihood(row, mean, shape));
        var lasting = Integral((mean, shape) => Likelihood(row, mean, shape) * (1 - Of(row, mean, shape).CumulativeDistribution(hours)));
        Assert.Equal(0.8, lasting / all, 1e-5);
    }

    [Fact]
    public void The_gamma_function_is_MathNets() =>
        Gen.Double[0.1, 20].Sample(x => Math.Abs((GammaFunction.Of(x) / SpecialFunctions.Gamma(x)) - 1) < 1e-10);

    [Fact]
    public void Nists_shape_and_scale_come_out_where_next_to_nothing_is_known_beforehand()
    {
        // NIST/SEMATECH e-Handbook 8.4.1.3: ten failures, ten units still running at 500; shape 1.7208, scale 606.528, by
        // maximum likelihood. A mean over what is likely lies near it, more so the more data: here each unit a hundred times.
        double[] failed = [54, 187, 216, 240, 244, 335, 361, 373, 375, 386];
        double[] running = [.. Enumerable.Repeat(500.0, 1000)];
        var vague = new WearValues { LifeSpread = 0.5, Shape = 1.7, ShapeSpread = 0.4 };
        var model = WearModel.Of(270, vague, [.. Enumerable.Repeat(failed, 100).SelectMany(hours => hours)], running);
        Assert.Equal(1.7208, model.MeanShape, 0.01);
        Assert.Equal(606.528 * SpecialFunctions.Gamma(1 + (1 / 1.7208)), model.MeanLife, 1.0);
    }

    [Fact]
    public void Six_breaks_between_four_and_five_hours_no_longer_promise_twelve()
    {
        var racket = Broken(4.2, 4.8, 4.5, 5, 4.4, 4.6).AfterDays(0);
        Assert.InRange(racket.Limit<BreakageLimit>().Hours!.Value, 3, 4.2);
        // 7 · 3.8658 / 4.5 = 6.01
        Assert.Equal((LimitKind.Breakage, Case.Strung.AddDays(6)), (racket.DecidedBy, racket.Due));
    }

    [Fact]
    public void Two_breaks_make_a_limit_and_one_is_only_listed()
    {
        var one = Broken(12).AfterDays(0).Limit<BreakageLimit>();
        Assert.Equal((null, (double?)null), (one.Day, one.Hours));
        Assert.Equal([12], one.BrokeAfter);
        Assert.Empty(Case.Racket.AfterDays(0).Limits.OfType<BreakageLimit>());

        var three = (Broken(14, 16.5, 12) with { Learned = new Learned { BrokeAfter = [14, 16.5, 12], CameOutAfter = [10] } }).AfterDays(0);
        // 7 · 11.4353 / 4.5 = 17.79
        Assert.Equal((LimitKind.Breakage, Case.Strung.AddDays(17)), (three.DecidedBy, three.Due));
        Assert.Equal([12, 14, 16.5], three.Limit<BreakageLimit>().BrokeAfter);
    }

    [Fact]
    public void In_a_hybrid_the_mains_material_tells_how_strings_break()
    {
        var polyester = new BedString(Material.Polyester, 1.30m);
        var gut = new BedString(Material.NaturalGut, 1.30m);
        JobHistory[] jobs =
        [
            Came(Material.Polyester, BedEnd.Wear, 14), Came(Material.Polyester, BedEnd.Wear, 16.5), Came(Material.Polyester, BedEnd.Wear, 12),
            Came(Material.Polyester, BedEnd.CutOut, 10), Came(Material.NaturalGut, BedEnd.Wear, 40), Came(Material.NaturalGut, BedEnd.Wear, 50),
        ];
        var history = new RacketHistory { Jobs = jobs };
        Assert.Equal(11.4353, history.AddTo(Case.Racket with { Bed = new Bed(polyester, gut) }).AfterDays(0).Limit<BreakageLimit>().Hours!.Value, 1e-4);
        Assert.InRange(history.AddTo(Case.Racket with { Bed = new Bed(gut, polyester) }).AfterDays(0).Limit<BreakageLimit>().Hours!.Value, 30, 50);

        static JobHistory Came(Material mains, BedEnd ended, double hours) => new() { Mains = mains, Ended = ended, Hours = hours };
    }

    [Fact]
    public void Without_play_there_is_no_day()
    {
        var idle = (Broken(12, 14) with { Play = new Play(0, 1, Hitting.Average) }).AfterDays(0).Limit<BreakageLimit>();
        Assert.Null(idle.Day);
        Assert.NotNull(idle.Hours);
    }

    [Fact]
    public void Twice_the_hours_of_twice_the_life_are_twice_the_limit() =>
        Gen.Select(Hours.Array[2, 6], Hours.Array[0, 4], Gen.Double[8, 60]).Sample((breaks, unbroken, life) =>
            Math.Abs((Lasts(2 * life, [.. breaks.Select(h => 2 * h)], [.. unbroken.Select(h => 2 * h)]) / (2 * Lasts(life, breaks, unbroken))) - 1) < 1e-6, iter: 50);

    [Fact]
    public void The_order_does_not_matter() =>
        Gen.Select(Hours.Array[2, 6], Hours.Array[0, 4], Gen.Double[8, 60]).Sample((breaks, unbroken, life) =>
            Math.Abs(Lasts(life, breaks, unbroken) - Lasts(life, [.. breaks.Reverse()], [.. unbroken.Reverse()])) < 1e-6, iter: 50);

    [Fact]
    public void Three_breaks_within_a_tenth_of_each_other_put_the_limit_below_their_median() =>
        Gen.Select(Gen.Double[0.25, 4], Gen.Double[0, 0.1].Array[3, 8], Gen.Double[8, 60]).Sample((factor, more, life) =>
        {
            double[] breaks = [.. more.Select(m => factor * life * (1 + m)).Order()];
            return Lasts(life, breaks, []) < breaks[(breaks.Length - 1) / 2];
        }, iter: 100);

    [Fact]
    public void Odd_hours_still_give_a_limit() =>
        Gen.Select(Gen.Double[0.01, 5000].Array[2, 200], Gen.Double[0.01, 5000].Array[0, 40], Gen.Double[1, 500]).Sample((breaks, unbroken, life) =>
            Lasts(life, breaks, unbroken) is > 0 and < 1e6, iter: 50);

    private static readonly Gen<double> Hours = Gen.Double[1, 60];

    private static double Lasts(double life, double[] breaks, double[] unbroken) =>
        WearModel.Of(life, new WearValues(), breaks, unbroken).HoursLastedBy(0.8);

    private static ForecastInput Broken(params double[] hours) => Case.Racket with { Learned = Learned.Nothing with { BrokeAfter = hours } };

    // Over the same ±6 and ±4 prior standard deviations, in panels so narrow that a steep posterior is met.
    private static double Integral(Func<double, double, double> f)
    {
        var sum = 0.0;
        for (var mean = -6.0; mean < 6; mean += 0.5)
            for (var shape = -4.0; shape < 4; shape += 2)
                sum += GaussLegendreRule.Integrate(f, mean, mean + 0.5, shape, shape + 2, 20);
        return sum;
    }

    private static Weibull Of(Row row, double mean, double shape)
    {
        var k = 3.5 * Math.Exp(0.4 * shape);
        return new Weibull(k, 2 * row.Life * Math.Exp(0.5 * mean) / SpecialFunctions.Gamma(1 + (1 / k)));
    }

    private static double Likelihood(Row row, double mean, double shape)
    {
        var weibull = Of(row, mean, shape);
        return Math.Exp(row.Breaks.Sum(weibull.DensityLn) + row.Unbroken.Sum(h => -Math.Pow(h / weibull.Scale, weibull.Shape)))
            * Normal.PDF(0, 1, mean) * Normal.PDF(0, 1, shape);
    }
}
