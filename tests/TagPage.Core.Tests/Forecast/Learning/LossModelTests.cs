using CsCheck;
using TagPage.Core.Forecast;
using TagPage.Core.Forecast.Learning;
using TagPage.Core.Players;
using TagPage.Core.Strings;

namespace TagPage.Core.Tests.Forecast.Learning;

/// <summary>
/// The cases were worked out apart from this code with NumPy 1.24 (numpy.linalg, one offset a bed as a further unknown, all
/// beds in one go); the posteriors are worked out a third time here, by MathNet.Numerics.
/// </summary>
public class LossModelTests
{
    public sealed record Row(
        Material Material, double HoursAWeek, LossReading[][] Beds, double A, double B, double Covariance, int Due, int Early, int Late, double At28);

    public static TheoryData<Row> Cases => new(
        new Row(Material.Polyester, 4.5, [], 3.2, 0.7, 0, 30, 20, 52, 24.1380),
        new Row(Material.Polyester, 4.5, [[new(14, 7, 15), new(30, 15, 22)], [new(21, 10, 17.5)]], 3.091258, 0.703648, -0.060228, 31, 26, 38, 23.8116),
        new Row(Material.Multifilament, 3, [[new(40, 16, 14)]], 2.142555, 0.385636, -0.024276, 98, 76, 141, 12.3529),
        new Row(Material.NaturalGut, 6, [], 1.2, 0.25, 0, 71, 50, 123, 10.3268),
        new Row(Material.SyntheticGut, 1.5, [[new(60, 12, 14), new(90, 20, 18.5)]], 2.197815, 0.463993, -0.027118, 156, 127, 202, 10.7085),
        new Row(Material.Aramid, 3, [], 2.4, 0.5, 0, 51, 33, 88, 14.6535));

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
        Assert.Equal(row.Beds.Sum(bed => bed.Length), curve.Model.Readings);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void MathNet_finds_the_same_posterior_and_range(Row row)
    {
        if (row.Beds.Length == 0)
            return;
        var typical = StartingValues.Default.Tension.Of(row.Material);
        var size = 2 + row.Beds.Length;
        var prior = new double[size, size];
        (prior[0, 0], prior[1, 1]) = (Math.Pow(typical.Settling / 4, 2), Math.Pow(typical.PerHour / 3, 2));
        for (var i = 2; i < size; i++)
            prior[i, i] = 1.5 * 1.5;
        var measured = row.Beds.SelectMany((bed, i) => bed.Select(r => ((IReadOnlyList<double>)Design(r, i, size), r.Percent))).ToList();
        var (mean, covariance) = GaussianTests.WithMathNet([typical.Settling, typical.PerHour, .. new double[size - 2]], prior, measured, 1.5);
        var point = Racket(row).AfterDays(0).Limit<TensionLimit>().Curve!.On(Case.Strung.AddDays(28));
        double[] x = [Math.Log10(1 + (144 * 28)), row.HoursAWeek * 4, .. new double[size - 2]];
        Assert.Equal((mean[0] * x[0]) + (mean[1] * x[1]), point.Expected, 10);
        Assert.Equal(1.2815515655446 * Math.Sqrt(GaussianTests.Quadratic(x, covariance)), point.High - point.Expected, 10);
    }

    [Fact]
    public void A_negative_mean_counts_as_nothing()
    {
        var model = LossModel.Of(StartingValues.Default.Tension.Polyester, new LossSpread { ReadingNoise = 0.1 }, [[new(1, 10, -40), new(100, 10, -40)]]);
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
            var whole = readings[..(readings.Length / 3 * 3)];
            var (one, other) = (Model(material, whole), Model(material, [.. whole.Reverse()]));
            return Math.Abs(one.Settling - other.Settling) < 1e-9 && Math.Abs(one.PerHour - other.PerHour) < 1e-9;
        });

    [Fact]
    public void The_range_narrows_with_every_reading() =>
        Gen.Select(Gen.Enum<Material>(), Readings, Gen.Double[1, 100]).Sample((material, readings, days) =>
            Model(material, readings).HalfRange(days, days / 2) <= Model(material, readings[..^1]).HalfRange(days, days / 2) + 1e-9);

    private static double[] Design(LossReading reading, int bed, int size)
    {
        var row = new double[size];
        (row[0], row[1], row[2 + bed]) = (Math.Log10(1 + (144 * reading.Days)), reading.Hours, 1);
        return row;
    }

    private static readonly Gen<LossReading[]> Readings =
        Gen.Select(Gen.Double[0, 200], Gen.Double[0, 80], Gen.Double[-5, 50]).Select((days, hours, loss) => new LossReading(days, hours, loss)).Array[1, 8];

    private static LossModel Model(Material material, LossReading[] readings) =>
        LossModel.Of(StartingValues.Default.Tension.Of(material), new LossSpread(), [.. readings.Chunk(3)]);

    // Beyond two years there is no day: the end of the calendar is used instead.
    private static DateOnly DueAt(Material material, double week, LossReading[] readings) =>
        Racket(new Row(material, week, [readings], 0, 0, 0, 0, 0, 0, 0)).AfterDays(0).Limit<TensionLimit>().Day ?? DateOnly.MaxValue;

    private static ForecastInput Racket(Row row) => Case.Racket with
    {
        Bed = Case.Of(row.Material, 1.30m),
        Play = new Play((decimal)row.HoursAWeek, 1, Hitting.Average),
        Learned = Learned.Nothing with { Beds = row.Beds },
    };
}
