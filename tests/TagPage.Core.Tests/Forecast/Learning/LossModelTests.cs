using CsCheck;
using TagPage.Core.Forecast;
using TagPage.Core.Forecast.Learning;
using TagPage.Core.Players;
using TagPage.Core.Strings;

namespace TagPage.Core.Tests.Forecast.Learning;

/// <summary>
/// The cases were worked out apart from this code with NumPy from the stated formulas; the posteriors are worked out a
/// third time here, by MathNet.Numerics.
/// </summary>
public class LossModelTests
{
    public sealed record Row(
        Material Material, double HoursAWeek, LossReading[] Readings, double A, double B, double Covariance, int Due, int Early, int Late, double At28);

    public static TheoryData<Row> Cases => new(
        new Row(Material.Polyester, 4.5, [], 3.2, 0.7, 0, 30, 20, 52, 24.138),
        new Row(Material.Polyester, 4.5, [new(14, 7, 15), new(30, 15, 22), new(21, 10, 17.5)], 3.106317, 0.697363, -0.070640, 31, 27, 38, 23.7528),
        new Row(Material.Multifilament, 3, [new(40, 16, 14)], 2.080628, 0.412222, -0.029173, 67, 52, 93, 12.4486),
        new Row(Material.NaturalGut, 6, [], 1.2, 0.25, 0, 49, 34, 84, 10.3268),
        new Row(Material.SyntheticGut, 1.5, [new(60, 12, 19), new(90, 20, 24.5)], 2.744369, 0.613246, -0.032034, 69, 59, 81, 13.5747));

    [Theory]
    [MemberData(nameof(Cases))]
    public void Readings_sharpen_the_typical_values_and_move_the_day(Row row)
    {
        var limit = Racket(row).AfterDays(0).Limit<TensionLimit>();
        var curve = limit.Curve!;
        Assert.Equal(row.A, curve.Model.Settling, 1e-6);
        Assert.Equal(row.B, curve.Model.PerHour, 1e-6);
        Assert.Equal(row.Covariance, curve.Model.Estimate.Covariance[0, 1], 1e-6);
        Assert.Equal(row.At28, curve.On(Case.Strung.AddDays(28)).Expected, 1e-4);
        Assert.Equal(Case.Strung.AddDays(row.Due), limit.Day);
        Assert.Equal((Case.Strung.AddDays(row.Early), Case.Strung.AddDays(row.Late)), curve.Range());
        Assert.Equal(row.Readings.Length, curve.Model.Readings);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void MathNet_finds_the_same_posterior_and_range(Row row)
    {
        if (row.Readings.Length == 0)
            return;
        var typical = StartingValues.Default.Tension.Of(row.Material);
        var measured = row.Readings.Select(r => ((IReadOnlyList<double>)[Math.Log10(1 + (144 * r.Days)), r.Hours], r.Percent)).ToList();
        var (mean, covariance) = GaussianTests.WithMathNet(
            [typical.Settling, typical.PerHour], new double[,] { { Math.Pow(typical.Settling / 4, 2), 0 }, { 0, Math.Pow(typical.PerHour / 3, 2) } }, measured, 2);
        var point = Racket(row).AfterDays(0).Limit<TensionLimit>().Curve!.On(Case.Strung.AddDays(28));
        double[] x = [Math.Log10(1 + (144 * 28)), row.HoursAWeek * 4];
        Assert.Equal((mean[0] * x[0]) + (mean[1] * x[1]), point.Expected, 10);
        Assert.Equal(1.2815515655446 * Math.Sqrt(GaussianTests.Quadratic(x, covariance)), point.High - point.Expected, 10);
    }

    [Fact]
    public void A_negative_mean_counts_as_nothing()
    {
        var model = LossModel.Of(StartingValues.Default.Tension.Polyester, new LossSpread { ReadingNoise = 0.1 }, [new(1, 10, -40), new(100, 10, -40)]);
        Assert.True(model.Estimate.Mean[1] < 0);
        Assert.Equal(0, model.PerHour);
        Assert.True(model.Expected(10, 100) >= 0);
    }

    [Fact]
    public void More_play_never_moves_the_day_later_at_the_typical_values() =>
        Gen.Select(Gen.Enum<Material>(), Gen.Double[0.2, 20], Gen.Double[0, 10]).Sample((material, hours, more) =>
            DueAt(material, hours + more, []) <= DueAt(material, hours, []));

    [Fact]
    public void With_one_reading_a_larger_loss_never_moves_the_day_later() =>
        Gen.Select(Gen.Enum<Material>(), Gen.Double[0.5, 12], Gen.Double[1, 120], Gen.Double[0, 60], Gen.Double[-5, 50], Gen.Double[0, 30]).Sample(
            (material, week, days, hours, loss, more) =>
                DueAt(material, week, [new(days, hours, loss + more)]) <= DueAt(material, week, [new(days, hours, loss)]));

    [Fact]
    public void The_order_of_readings_does_not_matter() =>
        Gen.Select(Gen.Enum<Material>(), Readings).Sample((material, readings) =>
        {
            var (one, other) = (Model(material, readings), Model(material, [.. readings.Reverse()]));
            return Math.Abs(one.Settling - other.Settling) < 1e-9 && Math.Abs(one.PerHour - other.PerHour) < 1e-9;
        });

    [Fact]
    public void The_range_narrows_with_every_reading() =>
        Gen.Select(Gen.Enum<Material>(), Readings, Gen.Double[1, 100]).Sample((material, readings, days) =>
            Model(material, readings).HalfRange(days, days / 2) <= Model(material, readings[..^1]).HalfRange(days, days / 2) + 1e-9);

    private static readonly Gen<LossReading[]> Readings =
        Gen.Select(Gen.Double[0, 200], Gen.Double[0, 80], Gen.Double[-5, 50]).Select((days, hours, loss) => new LossReading(days, hours, loss)).Array[1, 8];

    private static LossModel Model(Material material, LossReading[] readings) =>
        LossModel.Of(StartingValues.Default.Tension.Of(material), new LossSpread(), readings);

    // Beyond two years there is no day: the end of the calendar stands in.
    private static DateOnly DueAt(Material material, double week, LossReading[] readings) =>
        Racket(new Row(material, week, readings, 0, 0, 0, 0, 0, 0, 0)).AfterDays(0).Limit<TensionLimit>().Day ?? DateOnly.MaxValue;

    private static ForecastInput Racket(Row row) => Case.Racket with
    {
        Bed = Case.Of(row.Material, 1.30m),
        Play = new Play((decimal)row.HoursAWeek, 1, Hitting.Average),
        Learned = Learned.Nothing with { Losses = row.Readings },
    };
}
