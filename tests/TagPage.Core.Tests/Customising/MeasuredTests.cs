using TagPage.Core.Customising;

namespace TagPage.Core.Tests.Customising;

public class MeasuredTests
{
    private static readonly Tolerances Instruments = new();

    [Fact]
    public void Instruments_start_with_a_tenth_of_a_gram_a_millimetre_and_one_kg_cm2() =>
        Assert.Equal((0.1, 0.1, 1.0), (Instruments.Mass(300).Off, Instruments.Length(32).Off, Instruments.Swing(290).Off));

    [Fact]
    public void Recoil_weight_carries_all_three_tolerances()
    {
        // By hand, 300 g, 32 cm, 290: ∂R/∂S = 1, ∂R/∂M = −22²/1000, ∂R/∂B = −2·0.3·22.
        var recoil = new MeasuredBody(Instruments.Mass(300), Instruments.Length(32), Instruments.Swing(290)).RecoilWeight;

        Assert.Equal(144.8, recoil.Value, 9);
        Assert.Equal(Math.Sqrt(1 + Math.Pow(0.484 * 0.1, 2) + Math.Pow(13.2 * 0.1, 2)), recoil.Off, 6);
    }

    [Fact]
    public void Points_carry_balance_and_half_the_length()
    {
        // By hand: a millimetre of balance and half a millimetre of length, in eighths of an inch.
        var points = Measured.Points(Instruments.Length(32), Instruments.Length(68.58));

        Assert.Equal(7.2126, points.Value, 4);
        Assert.Equal(Math.Sqrt(0.01 + 0.0025) / 0.3175, points.Off, 9);
    }

    [Fact]
    public void Balance_from_two_scales_carries_both_scales_and_the_length()
    {
        // By hand: b = t·L/m, so (∂/∂t, ∂/∂m, ∂/∂L) = (L/m, −t·L/m², t/m).
        var (t, m, l) = (165.0, 350.0, 68.58);
        var balance = Uncertain.Of(v => BalancePoint.FromTip(v[0], v[1], v[2]), Instruments.Mass(t), Instruments.Mass(m), Instruments.Length(l));

        Assert.Equal(Math.Sqrt(Math.Pow(l / m * 0.1, 2) + Math.Pow(t * l / m / m * 0.1, 2) + Math.Pow(t / m * 0.1, 2)), balance.Off, 6);
    }

    [Fact]
    public void Pendulum_result_agrees_with_a_simulation_of_all_its_errors()
    {
        // Simulated: each figure moved at random by its own uncertainty, a hundred thousand times.
        var random = new Random(5);
        Uncertain mass = new(320, 0.1), balance = new(32.5, 0.1), axis = new(1, 0.05), period = new(1.5, 0.002);
        var worked = Uncertain.Of(v => new Pendulum(v[0], v[1], v[2], v[3]).SwingWeight(), mass, balance, axis, period);
        double[] simulated =
        [
            .. Enumerable.Range(0, 100_000).Select(_ =>
                new Pendulum(Draw(mass), Draw(balance), Draw(axis), Draw(period)).SwingWeight()),
        ];

        var mean = simulated.Average();
        Assert.Equal(worked.Value, mean, 1);
        Assert.InRange(Math.Sqrt(simulated.Average(s => (s - mean) * (s - mean))) / worked.Off, 0.99, 1.01);

        double Draw(Uncertain figure) =>
            figure.Value + (figure.Off * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble()));
    }

    [Fact]
    public void Racket_after_masses_carries_theirs_and_their_places()
    {
        // By hand, 4 g at 68 cm on 300 g: two scales; and S' off by 1, by 58²/1000 of a tenth of a gram, by 2 · 0.004 · 58 of a millimetre.
        var (mass, _, swing) = new MeasuredBody(Instruments.Mass(300), Instruments.Length(32), Instruments.Swing(290)).After([new AddedMass(4, 68)], Instruments);

        Assert.Equal(Math.Sqrt(0.02), mass.Off, 9);
        Assert.Equal(303.456, swing.Value, 6);
        Assert.Equal(Math.Sqrt(1 + Math.Pow(3.364 * 0.1, 2) + Math.Pow(0.464 * 0.1, 2)), swing.Off, 6);
    }

    [Fact]
    public void Recoil_weight_after_a_mass_carries_what_is_open_about_all_five_figures()
    {
        // By hand, m grams at x cm: R' = S − M/1000·(B − 10)² + m/1000·M/(M + m)·(x − B)².
        var (m, b, g, x) = (300.0, 32.0, 4.0, 68.0);
        var share = m / (m + g);
        double[] effects =
        [
            1,
            ((b - 10) * (b - 10) / 1000) - (g * g / 1000 / (m + g) / (m + g) * (x - b) * (x - b)),
            (2 * m / 1000 * (b - 10)) + (2 * g / 1000 * share * (x - b)),
            m * m / 1000 / (m + g) / (m + g) * (x - b) * (x - b),
            2 * g / 1000 * share * (x - b),
        ];
        double[] off = [1, 0.1, 0.1, 0.1, 0.1];

        var recoil = new MeasuredBody(Instruments.Mass(m), Instruments.Length(b), Instruments.Swing(290)).After([new AddedMass(g, x)], Instruments).RecoilWeight;

        Assert.Equal(290 - (0.3 * 22 * 22) + (0.004 * share * 36 * 36), recoil.Value, 9);
        Assert.Equal(Math.Sqrt(effects.Zip(off, (effect, by) => effect * by * effect * by).Sum()), recoil.Off, 3);
    }

    [Fact]
    public void Change_of_the_twist_weight_carries_the_scale_and_the_place_and_nothing_on_the_axis()
    {
        // By hand: m·y²/1000 is off by y²/1000 of a tenth of a gram and by 2·m·y/1000 of a millimetre.
        var twist = Measured.TwistChange([new AddedMass(6, 53, 12.5), new AddedMass(4, 68)], Instruments);

        Assert.Equal(0.9375, twist.Value, 9);
        Assert.Equal(Math.Sqrt(Math.Pow(0.15625 * 0.1, 2) + Math.Pow(0.15 * 0.1, 2)), twist.Off, 6);
        Assert.Equal(new Uncertain(0, 0), Measured.TwistChange([], Instruments));
    }

    [Fact]
    public void Exact_figures_give_an_exact_result() =>
        Assert.Equal(0, new MeasuredBody(new(300, 0), new(32, 0), new(290, 0)).RecoilWeight.Off);

    [Theory]
    [InlineData(300.0, 300.1, false)]
    [InlineData(300.0, 300.2, true)]
    public void Frames_closer_than_two_readings_of_one_frame_cannot_be_told_apart(double one, double other, bool told) =>
        Assert.Equal(told, Spread.Of([new(one, 0.1), new(other, 0.1)]).CanBeTold);

    [Fact]
    public void Difference_of_a_figure_measured_badly_and_one_measured_well_is_off_by_both()
    {
        var spread = Spread.Of([new(311.8, 0.1), new(330, 4), new(350.2, 1.5)]);

        Assert.Equal(38.4, spread.Apart, 9);
        Assert.Equal(Math.Sqrt(0.1 * 0.1 + 1.5 * 1.5), spread.Off, 9);
    }
}
