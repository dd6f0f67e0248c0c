using TagPage.Core.Customising;
using TagPage.Core.Units;
using TagPage.Records.OwnPages;
using TagPage.Records.Specs;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Specs;

/// <summary>Specs are kept as entered, and read in grams and centimetres with what the instruments leave open.</summary>
public sealed class SpecFiguresTests
{
    private static readonly CustomisingValues Values = new();

    [Fact]
    public void Ounces_inches_and_points_are_kept_and_mean_the_same_in_the_database()
    {
        using var street = new Street();
        var store = new SpecStore(street.Database, street.Time);

        store.Add(Who.Shop, street.Racket, new SpecEntry
        {
            FormKey = FormKey.New(),
            MeasuredOn = Street.Today,
            Weight = 11.2m,
            WeightUnit = WeightUnit.Oz,
            Length = 27,
            LengthUnit = LengthUnit.In,
            Balance = 8,
            BalanceUnit = BalanceUnit.Points,
        });

        var spec = store.Of(street.Racket)[0];
        Assert.Equal((11.2m, WeightUnit.Oz, 27m, LengthUnit.In, 8m, BalanceUnit.Points), (spec.Weight!.Value, spec.WeightUnit, spec.Length!.Value, spec.LengthUnit, spec.Balance!.Value, spec.BalanceUnit));
        // 8 points head light on 27 inches balance at 12.5 inches (Brody, Cross, Lindsey, 2002).
        Assert.Equal((317.514659m, 685.8m, 317.5m), (Math.Round(spec.WeightG!.Value, 6), spec.LengthMm!.Value, spec.BalanceMm!.Value));
        Assert.Equal(1, street.Records.Count("spec", "abs(weight_g - 317.514659) < 1e-6 AND abs(length_mm - 685.8) < 1e-9 AND abs(balance_mm - 317.5) < 1e-9"));
    }

    [Theory]
    [InlineData(BalanceUnit.Cm, 32.5)]
    [InlineData(BalanceUnit.In, 12.795276)]
    [InlineData(BalanceUnit.Mm, 325)]
    public void Every_unit_of_balance_means_the_same_in_the_database(BalanceUnit unit, double typed)
    {
        using var street = new Street();
        new SpecStore(street.Database, street.Time).Add(Who.Shop, street.Racket,
            new SpecEntry { FormKey = FormKey.New(), MeasuredOn = Street.Today, Balance = (decimal)typed, BalanceUnit = unit, Length = 68.5m, LengthUnit = LengthUnit.Cm });

        Assert.Equal(1, street.Records.Count("spec", "abs(balance_mm - 325) < 1e-4 AND length_mm = 685"));
    }

    [Fact]
    public void Whole_and_broken_figures_are_read_beside_each_other()
    {
        using var street = new Street();
        street.Records.Change("""
            INSERT INTO spec (racket_id, measured_on, weight, length, balance, strung, grip_on, dampener_on)
            VALUES (@Racket, '2026-11-02', 300.5, 685.5, 320.5, 1, 1, 0), (@Racket, '2026-11-01', 300, 685, 320, 1, 1, 0);
            """, new { street.Racket });

        Assert.Equal([300.5m, 300], new OwnPageRacketStore(street.Database).Specs(street.Odalys, street.Racket).Select(spec => spec.WeightG!.Value));
    }

    [Fact]
    public void Measured_racket_has_a_recoil_weight_and_points()
    {
        var figures = SpecFigures.Of(new SpecEntry { Weight = 300, Balance = 320, SwingWeight = 290, Length = 685.8m }, Values);

        Assert.Equal(new Body(300, 32, 290), figures.Body);
        Assert.Equal((144.8, 7.2126), (Math.Round(figures.RecoilWeight!.Value.Value, 6), Math.Round(figures.Points!.Value.Value, 4)));
        Assert.Equal((0.1, 0.1, 1), (figures.MassG!.Value.Off, figures.BalanceCm!.Value.Off, figures.SwingWeight!.Value.Off));
    }

    [Fact]
    public void Two_scales_leave_something_else_open_than_a_balance_board()
    {
        var spec = new SpecEntry { Weight = 350, TipWeight = 165, Balance = 323.3m, Length = 685.8m };

        Assert.Equal(0.052, SpecFigures.Of(spec, Values).BalanceCm!.Value.Off, 3);
        Assert.Equal(0.1, SpecFigures.Of(spec with { TipWeight = null }, Values).BalanceCm!.Value.Off);
    }

    [Fact]
    public void Pendulum_carries_the_spread_of_its_taps()
    {
        var spec = new SpecEntry { Weight = 320, Balance = 325, SwingWeight = 420.9m, SwingSource = SwingSource.Pendulum, PendulumAxis = 0, PendulumPeriodS = 1.52m, PendulumOffS = 0.004m };

        var (sure, shaky) = (SpecFigures.Of(spec with { PendulumOffS = 0 }, Values).SwingWeight!.Value, SpecFigures.Of(spec, Values).SwingWeight!.Value);

        // By hand: 2 · 596.8723 · 0.004 / 1.52 more, added as squares.
        Assert.Equal(Math.Sqrt((sure.Off * sure.Off) + Math.Pow(2 * 596.8723 * 0.004 / 1.52, 2)), shaky.Off, 3);
    }

    [Fact]
    public void Time_of_a_swing_typed_alone_is_as_open_as_the_shops_stop_watch()
    {
        var spec = new SpecEntry { Weight = 320, Balance = 325, SwingWeight = 420.9m, SwingSource = SwingSource.Pendulum, PendulumAxis = 0, PendulumPeriodS = 1.52m };
        var clumsy = Values with { Tolerances = new Tolerances { PeriodS = 0.02 } };

        Assert.Equal(SpecFigures.Of(spec with { PendulumOffS = 0.007m }, Values).SwingWeight, SpecFigures.Of(spec, Values).SwingWeight);
        // By hand: 2 · 596.8723 · 0.007 / 1.52 = 5.5; twenty swings, start and stop each off by a tenth of a second.
        Assert.InRange(SpecFigures.Of(spec, Values).SwingWeight!.Value.Off, 5.5, 6);
        Assert.InRange(SpecFigures.Of(spec, clumsy).SwingWeight!.Value.Off, 15.7, 16);
        Assert.Equal(Math.Sqrt(2) * SwingTimes.HandS / 20, Values.Tolerances.PeriodS, 3);
    }

    [Fact]
    public void What_was_not_measured_has_no_figure() =>
        Assert.Equal(new SpecFigures(), SpecFigures.Of(new SpecEntry { Stiffness = 64 }, Values));
}
