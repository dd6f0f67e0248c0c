using CsCheck;
using MathNet.Numerics;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;
using TagPage.Core.Forecast;
using TagPage.Core.Forecast.Learning;
using TagPage.Core.Players;

namespace TagPage.Core.Tests.Forecast.Learning;

/// <summary>The cases were worked out apart from this code with NumPy, and are integrated over the posterior here.</summary>
public class WearModelTests
{
    public sealed record Row(double Life, double[] Breaks, double[] Unbroken, double PriorB, double A, double B, double At80);

    public static TheoryData<Row> Cases => new(
        new Row(18, [], [], 65521.377, 2, 65521.377, 19.77562),
        new Row(18, [14, 16.5, 12], [10], 65521.377, 5, 75485.502, 15.10318),
        new Row(25, [22, 19], [24, 8], 175543.814, 4, 207386.814, 22.82926),
        new Row(40, [], [60, 55], 719027.461, 2, 1101402.461, 50.65835));

    [Theory]
    [MemberData(nameof(Cases))]
    public void Breaks_and_beds_that_came_out_unbroken_move_the_hours_that_four_in_five_last(Row row)
    {
        var prior = WearModel.Prior(row.Life, 3, 2);
        var model = prior.After(row.Breaks, row.Unbroken);
        Assert.Equal(row.PriorB, prior.B, 1e-3);
        Assert.Equal((row.A, row.B), (model.A, Math.Round(model.B, 3)));
        Assert.Equal(row.At80, model.HoursLastedBy(0.8), 1e-5);
        Assert.Equal(0.8, model.Survival(model.HoursLastedBy(0.8)), 12);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Integrating_over_the_posterior_gives_the_same_chance(Row row)
    {
        var model = WearModel.Prior(row.Life, 3, 2).After(row.Breaks, row.Unbroken);
        var hours = model.HoursLastedBy(0.8);
        var posterior = new InverseGamma(model.A, model.B);
        // θ = b / u with u from 0 to infinity; beyond u = 60 the gamma density is below 1e-18.
        var chance = GaussLegendreRule.Integrate(
            u => posterior.Density(model.B / u) * (model.B / (u * u)) * Math.Exp(-Math.Pow(hours, 3) * u / model.B), 1e-12, 60, 512);
        Assert.Equal(0.8, chance, 9);
    }

    [Fact]
    public void The_gamma_function_is_MathNets() =>
        Gen.Double[0.1, 20].Sample(x => Math.Abs((GammaFunction.Of(x) / SpecialFunctions.Gamma(x)) - 1) < 1e-10);

    [Fact]
    public void Nists_scale_comes_out_at_Nists_shape()
    {
        // NIST/SEMATECH e-Handbook 8.4.1.3: ten failures, ten units still running at 500; shape 1.7208, scale 606.528.
        double[] failed = [54, 187, 216, 240, 244, 335, 361, 373, 375, 386];
        var model = new WearModel(1.7208, 0, 0).After(failed, Enumerable.Repeat(500.0, 10));
        // Without a prior b/a = Σ Tᵏ / failures, whose k-th root is the likeliest scale.
        Assert.Equal(606.528, Math.Pow(model.B / model.A, 1 / model.Shape), 0.05);
    }

    [Fact]
    public void Two_breaks_make_a_limit_and_one_is_only_listed()
    {
        var one = Broken(12).AfterDays(0).Limit<BreakageLimit>();
        Assert.Equal((null, (double?)null), (one.Day, one.Hours));
        Assert.Equal([12], one.BrokeAfter);
        Assert.Empty(Case.Racket.AfterDays(0).Limits.OfType<BreakageLimit>());

        var three = (Broken(14, 16.5, 12) with { Learned = new Learned { BrokeAfter = [14, 16.5, 12], CameOutAfter = [10] } }).AfterDays(0);
        // 7 · 15.10318 / 4.5 = 23.49
        Assert.Equal((LimitKind.Breakage, Case.Strung.AddDays(23)), (three.DecidedBy, three.Due));
        Assert.Equal([12, 14, 16.5], three.Limit<BreakageLimit>().BrokeAfter);
    }

    [Fact]
    public void Without_play_there_is_no_day()
    {
        var idle = (Broken(12, 14) with { Play = new Play(0, 1, Hitting.Average) }).AfterDays(0).Limit<BreakageLimit>();
        Assert.Null(idle.Day);
        Assert.NotNull(idle.Hours);
    }

    [Fact]
    public void A_bed_that_lasted_longer_never_moves_the_hours_earlier() =>
        Gen.Select(Gen.Double[1, 60].Array[2, 6], Gen.Double[0, 40]).Sample((breaks, more) =>
            Lasts([breaks[0] + more, .. breaks[1..]]) >= Lasts(breaks) - 1e-9);

    private static double Lasts(double[] breaks) => WearModel.Prior(18, 3, 2).After(breaks, []).HoursLastedBy(0.8);

    private static ForecastInput Broken(params double[] hours) => Case.Racket with { Learned = Learned.Nothing with { BrokeAfter = hours } };
}
