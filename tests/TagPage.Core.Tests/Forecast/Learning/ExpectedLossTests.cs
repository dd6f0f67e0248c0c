using MathNet.Numerics.Distributions;
using TagPage.Core.Forecast;
using TagPage.Core.Forecast.Learning;
using TagPage.Core.Strings;

namespace TagPage.Core.Tests.Forecast.Learning;

public class ExpectedLossTests
{
    private static readonly LossValues Polyester = StartingValues.Default.Tension.Of(Material.Polyester);

    [Fact]
    public void Between_the_ends_lie_99_in_100_by_MathNet() =>
        Assert.Equal(ExpectedLoss.NinetyNinePercent, Normal.InvCDF(0, 1, 0.995), 1e-9);

    // Worked out by hand from the stated formula: x = (log10(1 + 144 · 14), 7, 1), variance xᵀΣ₀x + σ² with
    // Σ₀ = diag(0.8², (0.7/3)², 1.5²) and σ = 1.5, computed with NumPy.
    [Fact]
    public void Before_any_reading_it_is_what_the_material_leaves_possible()
    {
        var expected = ExpectedLoss.Of(Polyester, new LossSpread(), [], [], 14, 7);
        Assert.Equal(5.7832, expected.Low, 1e-4);
        Assert.Equal(25.1669, expected.High, 1e-4);
    }

    [Fact]
    public void Sixty_four_before_and_26_point_9_now_is_asked_about()
    {
        var loss = MeasuredLoss.Percent(ReadingScale.Stiffness, 64, 26.9);
        Assert.True(ExpectedLoss.Of(Polyester, new LossSpread(), [], [], 14, 7).IsDoubtful(loss));
        Assert.False(ExpectedLoss.Of(Polyester, new LossSpread(), [], [], 14, 7).IsDoubtful(MeasuredLoss.Percent(ReadingScale.Stiffness, 64, 54)));
    }

    [Fact]
    public void A_gain_of_tension_after_weeks_of_play_is_asked_about() =>
        Assert.True(ExpectedLoss.Of(Polyester, new LossSpread(), [], [], 30, 15).IsDoubtful(-5));

    [Fact]
    public void The_beds_own_readings_narrow_it()
    {
        var alone = ExpectedLoss.Of(Polyester, new LossSpread(), [], [], 20, 10);
        var known = ExpectedLoss.Of(Polyester, new LossSpread(), [], [new(14, 7, 15)], 20, 10);
        var others = ExpectedLoss.Of(Polyester, new LossSpread(), [[new(14, 7, 15)]], [], 20, 10);
        Assert.True(known.High - known.Low < others.High - others.Low);
        Assert.True(others.High - others.Low < alone.High - alone.Low);
    }

    [Fact]
    public void A_slip_that_was_kept_in_doubt_moves_no_date()
    {
        var first = new BedReading { IsFirst = true, Day = Case.Strung, InstrumentId = 1, Scale = ReadingScale.Stiffness, Value = 64, Hours = 0 };
        var slip = first with { IsFirst = false, Day = Case.Strung.AddDays(14), Value = 26.9, Hours = 9, IsDoubtful = true };
        Assert.Equal(Case.Racket.AfterDays(14).Limit<TensionLimit>().Day, With(slip).AfterDays(14).Limit<TensionLimit>().Day);
        Assert.NotEqual(Case.Racket.AfterDays(14).Limit<TensionLimit>().Day, With(slip with { IsDoubtful = false }).AfterDays(14).Limit<TensionLimit>().Day);

        ForecastInput With(BedReading reading) =>
            new RacketHistory { Jobs = [new JobHistory { Mains = Material.Polyester, Readings = [first, reading] }] }.AddTo(Case.Racket);
    }
}
